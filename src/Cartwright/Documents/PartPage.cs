using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Cartwright.Chips;
using Cartwright.Manifests;

namespace Cartwright.Documents;

/// <summary>The catalogue as a page of documentation.</summary>
public static class PartPage
{
    private const string Head = """
        # Parts

        Every part the catalogue knows. This page is generated from the table that comes with Cartwright.

        ## How to read it

        * **Names.** A part is found by its name here and by the names under *also written*; letter case, hyphens and blanks do not count.
          A longer order code is found by what stands before its first hyphen: `SST39SF040-70-4C-PHE` finds `SST39SF040`.
          Some rows mention a sister part of another capacity; the sister is not found by its name.
        * **Supply** is the range while reading, in volts.
        * **5 V inputs** says whether the inputs stand 5 V. Read *unknown* as no: on a 5 V bus such a part needs its own supply and
          level translation on every line. On a part with a mixed supply, *yes* holds only while the part itself runs on 5 V.
        * **Access** is the longest access time of each speed grade, in nanoseconds: the lower, the faster.
        * **Cycles** is the number of rewrites the part is rated for (FRAM: accesses, reading included); blank is not known.
        * **Status** says how far to trust a row. *Verified*: capacity, layout, ids and times were seen in the source. *Partly verified*:
          only the fields named were seen in the source, the rest is from memory. *From memory*: nothing was seen. Data from memory are never
          the reason of an error, and all figures give way to the data sheet of the chip in your hand.
        * **Pin-outs** are not printed here: `cartwright parts NAME` draws those of a part, each with its own status.

        """;

    private static readonly ImmutableArray<string> Columns =
        ["part", "also written", "size", "data lines", "packages", "supply", "5 V inputs", "access", "cycles", "status", "seen", "source"];

    private static readonly CompositeFormat Counts = CompositeFormat.Parse("{0} parts: {1} verified, {2} partly verified, {3} from memory.\n");

    /// <summary>The page, in Markdown with LF line ends: the parts grouped by kind, in the order of the catalogue.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder(Head).Append('\n');
        var parts = PartCatalog.BuiltIn.All;
        int Count(PartStatus status) => parts.Count(part => part.Evidence.Status == status);
        page.AppendFormat(
            CultureInfo.InvariantCulture,
            Counts,
            parts.Length,
            Count(PartStatus.Verified),
            Count(PartStatus.PartlyVerified),
            Count(PartStatus.FromMemory));
        foreach (var kind in PartWords.Kinds.Values)
            AppendKind(page, kind);
        return page.ToString();
    }

    private static void AppendKind(StringBuilder page, PartKind kind)
    {
        page.Append("\n## ").Append(PartWords.Kinds.Print(kind)).Append("\n\n");
        MarkdownTable.Append(page, Columns, PartCatalog.BuiltIn.All.Where(part => part.Kind == kind).Select(Cells));
    }

    private static ImmutableArray<string> Cells(Part part) =>
    [
        part.Name,
        string.Join(", ", part.Aliases),
        ByteSize.Words(part.CapacityBytes),
        PartWords.DataBuses.Print(part.DataBus),
        part.Packages,
        part.Supply.Text,
        PartWords.Tolerances.Print(part.Supply.FiveVoltTolerantInputs),
        part.AccessText.Replace(";", ", ", StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal),
        part.Endurance.Text,
        PartWords.Statuses.Print(part.Evidence.Status),
        part.Evidence.VerifiedFields.Replace(" -- every other column from memory", "", StringComparison.Ordinal),
        part.Evidence.Source,
    ];
}
