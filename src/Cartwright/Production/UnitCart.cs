using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Production;

/// <summary>Makes the cart of a unit out of the cart all units share: its fields first, then the checksums that cover them.</summary>
/// <param name="common">The cart all units share.</param>
/// <param name="fields">The fields that differ.</param>
internal sealed class UnitCart(CartView common, ImmutableArray<UnitField> fields)
{
    /// <summary>The region a field lies in.</summary>
    public static string RegionOf(UnitField field, CartView cart) => field.Region ?? cart.Rom.Regions[0].Name;

    /// <summary>The cart with the bytes of a unit's fields.</summary>
    public CartView With(ImmutableArray<byte[]> values)
    {
        var regions = Copy();
        for (var i = 0; i < fields.Length; i++)
        {
            values[i].CopyTo(regions[RegionOf(fields[i], common)], fields[i].Offset);
        }

        var headers = common.Headers.Select(header => Renew(header, regions)).ToImmutableArray();
        return common with { Rom = RomOf(regions), Headers = headers };
    }

    /// <summary>The ROM with one value in every byte that differs from unit to unit: the fields, and the checksums that may cover them.</summary>
    public Rom Probe(byte value)
    {
        var regions = Copy();
        foreach (var field in fields)
        {
            regions[RegionOf(field, common)].AsSpan((int)field.Offset, field.Width).Fill(value);
        }

        foreach (var header in common.Headers.Where(static header => header.Table.Region is not null))
        {
            foreach (var entry in header.Checksums.Where(static entry => entry.Right))
            {
                regions[header.Table.Region!].AsSpan(entry.Offset, entry.Row.Length).Fill(value);
            }
        }

        return RomOf(regions);
    }

    private Dictionary<string, byte[]> Copy() => common.Rom.Regions.ToDictionary(static region => region.Name, static region => region.Bytes.ToArray(), StringComparer.OrdinalIgnoreCase);

    private Rom RomOf(Dictionary<string, byte[]> regions) => new([.. common.Rom.Regions.Select(region => new RegionImage(region.Name, regions[region.Name], region.Fill, region.Coverage))]);

    // A checksum that was wrong on purpose stays as it is.
    private static HeaderImage Renew(HeaderImage header, Dictionary<string, byte[]> regions)
    {
        var container = header.Container.ToArray();
        var bytes = header.Table.Region is { } name ? regions[name] : container;
        var checksums = ImmutableArray.CreateBuilder<ChecksumEntry>();
        foreach (var entry in header.Checksums)
        {
            var value = entry.Right ? entry.Row.Compute(entry.Row.Over is { } over ? regions[over] : bytes) : entry.Stored;
            entry.Row.Placement.Write(bytes.AsSpan(entry.Offset, entry.Row.Length), value);
            checksums.Add(entry with { Stored = value, Computed = entry.Right ? value : entry.Computed });
        }

        return header with { Checksums = checksums.ToImmutable(), Container = [.. container] };
    }
}
