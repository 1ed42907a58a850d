using System.Collections.Immutable;
using System.Text;
using Cartwright.Findings;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Checks of the header's texts.</summary>
internal static class TextChecks
{
    private static readonly ImmutableArray<string> TextFields =
        ["copyright", "domesticTitle", "overseasTitle", "serial", "revision", "devices", "modem", "memo", "region", "reserved"];

    private static readonly ImmutableArray<string> Months =
        ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];

    /// <summary>Checks them all.</summary>
    public static void Check(MegaDriveCart cart, FindingLog log)
    {
        CheckSystem(cart, log);
        var copyright = cart.Raw("copyright");
        if (!IsCopyright(copyright))
        {
            log.Add(MegaDriveFindings.CopyrightForm, cart.Place("copyright"), copyright.ContainsAnyExcept((byte)' ')
                ? $"The copyright is `{cart.Text("copyright")}`."
                : "There is no copyright; spaces stand in its place.", "(C), four letters, a space, four digits, a point, three letters of the month");
        }

        if (!IsSerial(cart.Raw("serial"), cart.Raw("revision")))
        {
            log.Add(MegaDriveFindings.SerialForm, cart.Place("serial"), $"The serial number is `{cart.Text("serial")}`, its revision `{cart.Text("revision")}`.",
                "two letters, a space, eight letters, a hyphen, two digits");
        }

        if (!IsRegion(cart.Raw("region")))
        {
            log.Add(MegaDriveFindings.RegionForm, cart.Place("region"), $"The region is `{cart.Text("region")}`.");
        }

        foreach (var field in TextFields)
        {
            if (cart.Raw(field).Contains((byte)0))
            {
                log.Add(MegaDriveFindings.ZeroFiller, cart.Place(field), $"The header's `{field}` holds zeros.");
            }
        }
    }

    private static void CheckSystem(MegaDriveCart cart, FindingLog log)
    {
        var place = cart.Place("systemType");
        var text = cart.Text("systemType");
        if (ProgramOrder.Recognise(cart)?.Severity == FindingSeverity.Error)
        {
            return;
        }

        if (!SystemTypes.OpensLock(cart.Raw("systemType")))
        {
            log.Add(MegaDriveFindings.NoLockText, place, $"The system type is `{text}`.");
        }
        else if (!SystemTypes.Known.Contains(text.TrimStart()))
        {
            log.Add(MegaDriveFindings.UnlistedSystem, place, $"The system type is `{text}`.", $"one of {string.Join(", ", SystemTypes.Known)}");
        }
    }

    // A publisher's code of three digits takes the place of the space as well: (C)T-1231991.JAN (Genesis format table).
    private static bool IsCopyright(ReadOnlySpan<byte> field) =>
        field.StartsWith("(C)"u8)
        && !field[3..7].ContainsAnyExceptInRange((byte)'!', (byte)'~')
        && (field[7] == ' ' || (field[3..5].SequenceEqual("T-"u8) && IsDigits(field[5..8])))
        && IsDigits(field[8..12])
        && field[12] == '.'
        && Months.Contains(Encoding.Latin1.GetString(field[13..16]));

    private static bool IsSerial(ReadOnlySpan<byte> serial, ReadOnlySpan<byte> revision) =>
        char.IsAsciiLetterUpper((char)serial[0]) && char.IsAsciiLetterOrDigit((char)serial[1]) && serial[2] == ' '
        && serial[3] != ' ' && !serial[3..].ContainsAnyExceptInRange((byte)' ', (byte)'~')
        && revision[0] == '-' && IsDigits(revision[1..]);

    private static bool IsRegion(ReadOnlySpan<byte> field)
    {
        var letters = field.TrimEnd((byte)' ');
        return (letters.Length == 1 && char.IsAsciiHexDigitUpper((char)letters[0])) || (letters.Length > 0 && !letters.ContainsAnyExcept("JUE"u8));
    }

    private static bool IsDigits(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExceptInRange((byte)'0', (byte)'9');
}
