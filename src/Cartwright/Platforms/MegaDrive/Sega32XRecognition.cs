using System.Buffers.Binary;
using System.Text;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Knows 32X images among those of the Mega Drive.</summary>
internal static class Sega32XRecognition
{
    private const int EntryAt = 4;
    private const uint AddressLines = 0xFFFFFF;
    private const int Enough = 2;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file, string plain, string variant)
    {
        if (MegaDriveRecognition.Recognise(file) is not { Certainty: > Certainty.Candidate } claim)
        {
            return null;
        }

        var body = file[claim.PrefixLength..];
        Span<byte> entry = stackalloc byte[4];
        Span<byte> system = stackalloc byte[SystemTypes.Length];
        Span<byte> name = stackalloc byte[ModuleHeader.NameLength];
        if (!MegaDriveRecognition.Peek(body, claim.Order, EntryAt, entry)
            || !MegaDriveRecognition.Peek(body, claim.Order, MegaDriveHeader.Start, system)
            || !MegaDriveRecognition.Peek(body, claim.Order, ModuleHeader.Start, name))
        {
            return null;
        }

        var signs = new List<string>();
        Add(Encoding.ASCII.GetString(system).Trim() == Sega32XPlatform.SystemType, $"system type `{Sega32XPlatform.SystemType}`");
        Add(Encoding.ASCII.GetString(name).Trim() == ModuleHeader.UsualName, $"module name `{ModuleHeader.UsualName}`");
        var hasText = signs.Count > 0;
        Add((BinaryPrimitives.ReadUInt32BigEndian(entry) & AddressLines) == ModuleHeader.StartUp, "entry 0x03F0");
        var isSure = signs.Count >= Enough;
        return !hasText ? null : claim with
        {
            Certainty = isSure ? claim.Certainty : Certainty.Candidate,
            Reason = $"{claim.Reason}; {string.Join(", ", signs)}",
            Variant = variant,
            Includes = isSure ? plain : null,
        };

        void Add(bool isThere, string sign)
        {
            if (isThere)
            {
                signs.Add(sign);
            }
        }
    }
}
