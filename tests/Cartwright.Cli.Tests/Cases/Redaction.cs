using System.IO.Hashing;
using System.Security.Cryptography;
using System.Text;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>Takes out of a run's texts what differs between machines and versions.</summary>
/// <param name="root">The temporary folder.</param>
internal sealed class Redaction(string root)
{
    /// <summary>Stands for the folder of the cart, in command lines and in results.</summary>
    public const string Cart = "$CART";

    private const string Version = "$VERSION";

    private readonly Dictionary<string, string> _digests = [];

    /// <summary>A record holds the version, so that its own digests change with it: they are shown as those of the redacted record.</summary>
    public void Know(ReadOnlySpan<byte> record)
    {
        var shown = Bytes(record.ToArray());
        _digests[Crc(record)] = Crc(shown);
        _digests[Convert.ToHexStringLower(SHA256.HashData(record))] = Convert.ToHexStringLower(SHA256.HashData(shown));
    }

    public string Text(string text)
    {
        var redacted = new StringBuilder(text.Replace("\r\n", "\n", StringComparison.Ordinal)).Replace(root, Cart);
        foreach (var (digest, shown) in _digests)
        {
            redacted.Replace(digest, shown);
        }

        return redacted.Replace($"\"cartwright\": \"{LibraryVersion.Text}\"", $"\"cartwright\": \"{Version}\"").ToString();
    }

    /// <summary>Bytes of a file with the version taken out of it.</summary>
    public byte[] Bytes(byte[] bytes) =>
        bytes.AsSpan().IndexOf("\"cartwright\": "u8) < 0 ? bytes : Encoding.UTF8.GetBytes(Text(Encoding.UTF8.GetString(bytes)));

    private static string Crc(ReadOnlySpan<byte> bytes) => Crc32.HashToUInt32(bytes).ToString("X8");
}
