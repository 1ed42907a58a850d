namespace Cartwright.Cli;

/// <summary><c>cartwright save</c>: the group of the verbs for what the player keeps.</summary>
internal static class SaveVerb
{
    public static Verb Create(TextWriter output, TextWriter errors) => new(
        "save",
        "Works on the player's progress: kinds of save memory, files examined, converted, kept, compared and checked, and the life of the battery.",
        "cartwright save kinds md",
        "cartwright save convert game.sav --platform md --from odd-ff --to packed --out game.chip.bin",
        "cartwright save keep saves read-1.sav read-2.sav --unit 000101",
        "cartwright save battery --capacity 225mAh --current 0.1uA --max-current 3uA")
    {
        SaveKindsVerb.Create(output, errors),
        SaveExamineVerb.Create(output, errors),
        SaveConvertVerb.Create(output, errors),
        SaveNewVerb.Create(output, errors),
        SaveKeepVerb.Create(output, errors),
        SaveCompareVerb.Create(output, errors),
        SaveCheckVerb.Create(output, errors),
        SaveBatteryVerb.Create(output, errors),
    };
}
