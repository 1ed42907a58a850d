using System.Text.Encodings.Web;
using System.Text.Json;

namespace Cartwright.Findings;

/// <summary>How every JSON file of the library looks: indented, lines ended by LF whatever the system, letters as they are.</summary>
internal static class JsonForm
{
    public static JsonWriterOptions Options { get; } = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
