using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>What homebrew images get wrong is told at its level; what can be put right is, and what may be meant is left with a word.</summary>
public sealed class SeenFaultTests
{
    public static TheoryData<string> Names => [.. SeenFaults.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_told_at_its_level(string name)
    {
        var image = Open(name);
        var log = new FindingLog();
        new ImageExamination(image, log).Run();
        var said = log.ToSorted().Select(finding => $"{finding.Code} {finding.Severity.ToString().ToLowerInvariant()}").ToList();
        if (SeenFaults.All[name].Said is { } wanted)
            Assert.Contains(wanted, said);
        else
            Assert.DoesNotContain(said, row => !row.EndsWith("note", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_can_be_put_right_is_and_the_rest_is_left(string name)
    {
        var fault = SeenFaults.All[name];
        var mended = OpenedExample.Mend(Open(name));
        if (fault.Mended)
            Assert.Equal(Cart(fault).File, mended.Bytes.ToArray());
        else
            Assert.DoesNotContain(mended.Changes, change => change.Left is null && change.Name == fault.Also);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_may_be_meant_is_put_right_only_when_named(string name)
    {
        if (SeenFaults.All[name].Also is not { } field)
        {
            Assert.DoesNotContain(OpenedExample.Mend(Open(name)).Changes, change => change.Left is not null);
            return;
        }

        Assert.NotNull(OpenedExample.Mend(Open(name)).Changes.Single(change => change.Name == field).Left);
        var asked = OpenedExample.Mend(Open(name), field).Changes.Single(change => change.Name == field);
        Assert.Null(asked.Left);
    }

    [Fact]
    public void Save_memory_is_put_onto_its_lane()
    {
        var mended = OpenedExample.Mend(Open("md: save memory beside its lane"));
        Assert.Equal([0x00, 0x20, 0x00, 0x01], mended.Bytes.Span[0x1B4..0x1B8].ToArray());
    }

    [Fact]
    public void A_header_is_written_where_nothing_is()
    {
        var mended = OpenedExample.Mend(Open("sms: no header"));
        var image = OpenedExample.Open(ExampleCart.All["lantern-tide-sms"], mended.Bytes.ToArray());
        Assert.DoesNotContain(OpenedExample.Codes(image), code => code is "CW4340" or "CW8008" or "CW8009");
        Assert.Equal("sms-export", image.Cart["region"]);
    }

    [Fact]
    public void Code_is_not_taken_for_a_header()
    {
        var image = Open("sms: code instead of a header");
        Assert.Equal(image.Bytes.ToArray(), OpenedExample.Mend(image).Bytes.ToArray());
    }

    private static ExampleCart Cart(SeenFault fault) => ExampleCart.All["lantern-tide-" + fault.Cart];

    private static OpenedImage Open(string name)
    {
        var fault = SeenFaults.All[name];
        return OpenedExample.Open(Cart(fault), fault.Spoil(Cart(fault).File));
    }
}
