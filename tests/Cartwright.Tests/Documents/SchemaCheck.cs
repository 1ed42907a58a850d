using System.Text.Json;
using Json.Schema;

namespace Cartwright.Tests.Documents;

/// <summary>Validates with JsonSchema.Net, which is independent of this project.</summary>
internal static class SchemaCheck
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly EvaluationOptions Flat = new() { OutputFormat = OutputFormat.List };

    /// <summary>Builds a schema. Each is registered by itself, so that schemas without an id do not meet.</summary>
    public static JsonSchema Build(string schema) => JsonSchema.FromText(schema, new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    /// <summary>What is wrong with a manifest; empty when it is valid.</summary>
    public static IReadOnlyList<string> Errors(JsonSchema schema, string manifest)
    {
        using var document = JsonDocument.Parse(manifest, Lenient);
        var results = schema.Evaluate(document.RootElement, Flat);
        return results.IsValid ? [] : [.. (results.Details ?? []).SelectMany(detail => (detail.Errors ?? []).Select(error => $"{detail.InstanceLocation}: {error.Key} {error.Value}")).Append("not valid")];
    }

    public static bool IsValid(JsonSchema schema, string manifest) => Errors(schema, manifest).Count == 0;
}
