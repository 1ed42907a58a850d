namespace Cartwright.Cli;

/// <summary><c>cartwright save</c></summary>
internal static class SaveVerb
{
    public static Verb Create(TextWriter output, TextWriter errors) => new(
        "save",
        "Works on the player's progress: keeps copies of it, compares them, checks them, and reckons the life of the battery.",
        "cartwright save keep saves read-1.sav read-2.sav --unit 000101",
        "cartwright save battery --capacity 225mAh --current 0.1uA --max-current 3uA")
    {
        SaveKeepVerb.Create(output, errors),
        SaveCompareVerb.Create(output, errors),
        SaveCheckVerb.Create(output, errors),
        SaveBatteryVerb.Create(output, errors),
    };
}
