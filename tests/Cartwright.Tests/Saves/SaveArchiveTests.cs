using System.Collections.Immutable;
using System.Security.Cryptography;
using Cartwright.Findings;
using Cartwright.Saves;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveArchiveTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly byte[] Save = [0x51, 0x00, 0xFF, 0x10];
    private static readonly byte[] Later = [0x51, 0x01, 0xFF, 0x10];

    private readonly TempFolder _folder = new();

    private string Index => InFolder(GenerationIndex.FileName);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_generation_is_kept_with_its_day_unit_and_digest()
    {
        var (kept, codes) = Keep(Save, Save);
        Assert.Empty(codes);
        Assert.Equal(("000101", 1, Day, true, ReadAgreement.Equal), (kept!.Unit, kept.Number, kept.Date, kept.IsDateGiven, kept.Reads));
        Assert.Equal([new("000101.0001.2026-11-25.sav", 4, Convert.ToHexStringLower(SHA256.HashData(Save)))], kept.Files);
        Assert.Equal(Save, File.ReadAllBytes(InFolder(kept.Files[0].Name)));
        Assert.Equal(["000101.0001.2026-11-25.sav", "saves.json"], Names());
    }

    [Fact]
    public void Generations_of_a_unit_are_numbered_and_none_is_replaced()
    {
        Assert.Equal(1, Keep(Save, Save).Kept!.Number);
        Assert.Equal(2, Keep(Later, Later).Kept!.Number);
        Assert.Equal(1, Keep(Later, Later, unit: "000102").Kept!.Number);
        Assert.Equal(3, Keep(Save, Save, unit: "000101").Kept!.Number);
        Assert.Equal(Save, File.ReadAllBytes(InFolder("000101.0001.2026-11-25.sav")));
        var (listed, codes) = List();
        Assert.Empty(codes);
        Assert.Equal([("000101", 1), ("000101", 2), ("000102", 1), ("000101", 3)], listed.Select(generation => (generation.Unit, generation.Number)));
    }

    // A file system may hold A and a for the same name.
    [Fact]
    public void Letter_case_makes_no_other_unit()
    {
        Keep(Save, Save, unit: "unit-a");
        Assert.Equal(2, Keep(Later, Later, unit: "UNIT-A").Kept!.Number);
    }

    [Fact]
    public void One_read_is_kept_and_recorded_as_one()
    {
        var (kept, codes) = Keep(Save, null);
        Assert.Equal((ReadAgreement.One, "CW9537"), (kept!.Reads, Assert.Single(codes)));
        Assert.Equal(ReadAgreement.One, Assert.Single(List().Generations).Reads);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(2)]
    [InlineData(0)]
    public void Reads_that_differ_are_both_kept(int length)
    {
        var (kept, codes) = Keep(Save, Later[..length]);
        Assert.Equal((ReadAgreement.Different, "CW9538"), (kept!.Reads, Assert.Single(codes)));
        Assert.Equal([Save, Later[..length]], kept.Files.Select(file => File.ReadAllBytes(InFolder(file.Name))));
        Assert.Equal(2, Assert.Single(List().Generations).Files.Length);
    }

    [Fact]
    public void A_save_that_did_not_change_is_told_and_kept()
    {
        Keep(Save, Save);
        Keep(Later, Later);
        var (kept, codes) = Keep(Save, Save);
        Assert.Equal((3, "CW9544"), (kept!.Number, Assert.Single(codes)));
    }

    [Theory]
    [InlineData("", "CW9545")]
    [InlineData("../x", "CW9545")]
    [InlineData("a b", "CW9545")]
    [InlineData("NUL", "CW9545")]
    public void A_unit_no_file_can_be_named_after_is_refused(string unit, string code)
    {
        var (kept, codes) = Keep(Save, Save, unit);
        Assert.Equal((null, code), (kept, Assert.Single(codes)));
        Assert.Empty(Names());
    }

    [Fact]
    public void Nothing_is_kept_of_an_empty_file()
    {
        Assert.Equal((null, "CW9500"), (Keep([], []).Kept, Assert.Single(Keep([], []).Codes)));
        Assert.Empty(Names());
    }

    [Fact]
    public void A_file_the_index_does_not_name_is_never_replaced()
    {
        File.WriteAllBytes(InFolder("000101.0001.2026-11-25.sav"), Later);
        Assert.Equal((null, "CW9543"), (Keep(Save, Save).Kept, Assert.Single(Keep(Save, Save).Codes)));
        Assert.Equal(Later, File.ReadAllBytes(InFolder("000101.0001.2026-11-25.sav")));
        Assert.False(File.Exists(Index));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{ "saves": 2, "generations": [] }""")]
    [InlineData("""{ "saves": 1, "generations": [ 7 ] }""")]
    [InlineData("""{ "saves": 1, "generations": [ { "unit": null } ] }""")]
    [InlineData("""{ "saves": 1, "generations": [ { "unit": "a", "generation": 1, "date": "25.11.2026", "dateFrom": "given", "reads": "equal", "files": [] } ] }""")]
    [InlineData("""{ "saves": 1, "generations": [ { "unit": "a", "generation": 1, "date": "2026-11-25", "dateFrom": "given", "reads": "some", "files": [] } ] }""")]
    [InlineData("""{ "saves": 1, "generations": [ { "unit": "a", "generation": 1, "date": "2026-11-25", "dateFrom": "given", "reads": "one", "files": [ { "file": "../x", "bytes": 1, "sha256": "" } ] } ] }""")]
    public void An_index_that_cannot_be_read_is_left_alone(string text)
    {
        File.WriteAllText(Index, text);
        Assert.Equal((null, "CW9540"), (Keep(Save, Save).Kept, Assert.Single(Keep(Save, Save).Codes)));
        Assert.Equal("CW9540", Assert.Single(List().Codes));
        Assert.Equal(text, File.ReadAllText(Index));
        Assert.Equal(["saves.json"], Names());
    }

    [Fact]
    public void A_kept_file_that_is_gone_or_another_is_told()
    {
        Keep(Save, Save);
        Keep(Later, Later);
        Keep(Later, null, "000102");
        File.Delete(InFolder("000101.0001.2026-11-25.sav"));
        File.WriteAllBytes(InFolder("000101.0002.2026-11-25.sav"), Save);
        File.WriteAllBytes(InFolder("000102.0001.2026-11-25.sav"), []);
        Assert.Equal(["CW9541", "CW9541", "CW9542"], List().Codes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_folder_is_no_empty_list()
    {
        var log = new FindingLog();
        Assert.Empty(new SaveArchive(InFolder("none")).List(log));
        Assert.Equal("CW9547", Assert.Single(log.ToSorted()).Code);
        Assert.Empty(Names());
    }

    // What a keep leaves behind that was killed between its moves: the earlier index waits in `old`, the new files are in place.
    [Fact]
    public void A_keep_that_was_killed_half_way_is_undone_by_the_next()
    {
        Keep(Save, Save);
        var stage = InFolder(".cartwright-stage");
        Directory.CreateDirectory(Path.Combine(stage, "old"));
        Directory.CreateDirectory(Path.Combine(stage, "new"));
        File.Move(Index, Path.Combine(stage, "old", GenerationIndex.FileName));
        File.WriteAllText(Path.Combine(stage, "fresh"), "000101.0002.2026-11-25.sav\n");
        File.WriteAllBytes(InFolder("000101.0002.2026-11-25.sav"), [1]);
        var (kept, codes) = Keep(Later, Later);
        Assert.Equal((2, "CW6006"), (kept!.Number, Assert.Single(codes)));
        Assert.Equal(["000101.0001.2026-11-25.sav", "000101.0002.2026-11-25.sav", "saves.json"], Names());
        Assert.Equal(Later, File.ReadAllBytes(InFolder("000101.0002.2026-11-25.sav")));
        Assert.Empty(List().Codes);
    }

    [Fact]
    public void Two_at_once_do_not_lose_a_generation()
    {
        var codes = new string[8];
        Parallel.For(0, codes.Length, i => codes[i] = string.Join(' ', Keep([(byte)i, 0xFF], [(byte)i, 0xFF]).Codes));
        var (generations, wrong) = List();
        Assert.Empty(wrong);
        Assert.All(codes, code => Assert.Contains(code, (string[])["", "CW6003"]));
        Assert.Equal(codes.Count(code => code.Length == 0), generations.Length);
        Assert.Equal(Enumerable.Range(1, generations.Length), generations.Select(generation => generation.Number));
    }

    [Theory]
    [InlineData("2026-11-25", true)]
    [InlineData("2026-02-30", false)]
    [InlineData("25.11.2026", false)]
    [InlineData("2026-11-5", false)]
    [InlineData("", false)]
    public void A_day_is_written_in_one_way(string text, bool isDay) => Assert.Equal(isDay, GenerationIndex.ParseDate(text) is not null);

    private string InFolder(string name) => Path.Combine(_folder.Path, name);

    private IEnumerable<string> Names() => Directory.EnumerateFileSystemEntries(_folder.Path).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    private (SaveGeneration? Kept, IEnumerable<string> Codes) Keep(byte[] first, byte[]? second, string unit = "000101")
    {
        var log = new FindingLog();
        var kept = new SaveArchive(_folder.Path).Keep(new SaveRead(unit, Day, true, "read.sav", first, second), log);
        return (kept, log.ToSorted().Select(finding => finding.Code));
    }

    private (ImmutableArray<SaveGeneration> Generations, IEnumerable<string> Codes) List()
    {
        var log = new FindingLog();
        return (new SaveArchive(_folder.Path).List(log), log.ToSorted().Select(finding => finding.Code));
    }
}
