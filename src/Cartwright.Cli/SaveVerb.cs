namespace Cartwright.Cli;

/// <summary><c>cartwright save</c>: the group of the verbs for what the player keeps.</summary>
internal static class SaveVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        return new Verb(
            "save",
            "Save memory: the kinds each platform has, and files of it examined and brought from one layout into another.",
            "cartwright save kinds md",
            "cartwright save convert game.sav --platform md --from odd-ff --to packed --out game.chip.bin")
        {
            SaveKindsVerb.Create(output, errors),
            SaveExamineVerb.Create(output, errors),
            SaveConvertVerb.Create(output, errors),
            SaveNewVerb.Create(output, errors),
        };
    }
}
