using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Production;

/// <summary>Checks the fields and the label of a run against the cart.</summary>
/// <param name="run">What the manifest says of the run.</param>
/// <param name="cart">The cart all units share.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class RunChecks(RunSettings run, CartView cart, FindingLog log)
{
    private static readonly string[] Further = ["title", "revision", "boardRevision"];

    public void Check()
    {
        foreach (var field in run.Fields)
        {
            if (run.Fields.Count(other => string.Equals(other.Name, field.Name, StringComparison.OrdinalIgnoreCase)) > 1)
            {
                log.Add(RunFindings.SameName, field.Place, $"There are several fields `{field.Name}`.");
            }

            if (SerialText.Problem(field) is { } problem)
            {
                log.Add(RunFindings.BadCheckDigit, field.Place, $"`{field.Name}`: {problem}.");
            }

            CheckPlace(field);
        }

        if (!run.Fields.Any(static field => field.Kind == UnitFieldKind.Serial))
        {
            log.Add(RunFindings.NoFields, cart.Place("run"), "The manifest has no field of the kind `serial` under `run`.");
        }

        CheckOverlaps();
        CheckLabel();
    }

    private void CheckPlace(UnitField field)
    {
        var name = UnitCart.RegionOf(field, cart);
        if (cart.Rom[name] is not { } region)
        {
            log.Add(RunFindings.FieldOutside, field.Place, $"`{field.Name}`: the cart has no region `{name}`.", $"one of {string.Join(", ", cart.Rom.Regions.Select(static own => own.Name))}");
        }
        else if (field.Offset + field.Width > region.Length)
        {
            log.Add(RunFindings.FieldOutside, field.Place, $"`{field.Name}` would end at {Number.Hex(field.Offset + field.Width, 6)}, and the region `{name}` has {ByteSize.Describe(region.Length)}.");
        }
        else if (region.CoveringSegment(field.Offset, field.Width) is { } segment)
        {
            log.Add(RunFindings.OverProgram, field.Place, $"`{field.Name}` is written over bytes of {segment.Program}.");
        }
    }

    private void CheckOverlaps()
    {
        for (var i = 0; i < run.Fields.Length; i++)
        {
            var field = run.Fields[i];
            foreach (var other in run.Fields.Take(i).Where(other => RegionName(other) == RegionName(field) && Overlap(field, other.Offset, other.Width)))
            {
                log.Add(RunFindings.FieldsOverlap, field.Place, $"`{field.Name}` and `{other.Name}` share bytes.");
            }

            foreach (var checksum in cart.Headers.Where(header => header.Table.Region == RegionName(field)).SelectMany(static header => header.Checksums).Where(entry => Overlap(field, entry.Offset, entry.Row.Length)))
            {
                log.Add(RunFindings.FieldsOverlap, field.Place, $"`{field.Name}` and the checksum `{checksum.Row.Name}` share bytes.");
            }
        }
    }

    private string RegionName(UnitField field) => UnitCart.RegionOf(field, cart);

    private static bool Overlap(UnitField field, long offset, int length) => field.Offset < offset + length && offset < field.Offset + field.Width;

    private void CheckLabel()
    {
        var names = run.Fields.Select(static field => field.Name).Concat(Further).ToList();
        foreach (var wrong in LabelText.Names(run.Label?.Text ?? "").Where(name => !names.Contains(name, StringComparer.OrdinalIgnoreCase)))
        {
            log.Add(RunFindings.BadLabel, run.Label!.Place, $"The label names `{{{wrong}}}`.", $"one of {string.Join(", ", names)}", NearestName.Question(wrong, names));
        }
    }
}
