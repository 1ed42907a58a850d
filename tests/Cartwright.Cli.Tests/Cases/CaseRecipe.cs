using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Tests;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>Makes binary inputs from lines of text; <c>tests/cases/README.md</c> lists them.</summary>
internal static class CaseRecipe
{
    public static void Make(string folder, IEnumerable<string> lines)
    {
        foreach (var words in lines.Select(static line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(static words => words is [not "#", ..]))
        {
            var file = Path.Combine(folder, words[0]);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            Make(file, words[1..]);
        }
    }

    private static void Make(string file, string[] words)
    {
        switch (words)
        {
            case ["fill", var value, var size]:
                var bytes = new byte[Size(size)];
                Array.Fill(bytes, (byte)Size(value));
                File.WriteAllBytes(file, bytes);
                break;
            case ["put", var offset, .. var digits]:
                using (var stream = File.OpenWrite(file))
                {
                    stream.Position = Size(offset);
                    stream.Write(Convert.FromHexString(string.Concat(digits)));
                }

                break;
            case ["copy", var source]:
                File.Copy(Path.Combine(Approved.Root, source), file);
                break;
            case ["cut", var size]:
                File.WriteAllBytes(file, File.ReadAllBytes(file)[..(int)Size(size)]);
                break;
            case ["link", var target]:
                Directory.CreateSymbolicLink(file, target);
                break;
            case ["folder"]:
                Directory.CreateDirectory(file);
                break;
            default:
                throw new InvalidDataException($"{file}: `{string.Join(' ', words)}` is no line of a recipe");
        }
    }

    private static long Size(string text) => ByteSize.TryParse(text, out var size) ? size : throw new InvalidDataException(string.Create(CultureInfo.InvariantCulture, $"`{text}` is no size"));
}
