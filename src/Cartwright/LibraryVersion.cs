namespace Cartwright;

/// <summary>The version of this library and of the command.</summary>
public static class LibraryVersion
{
    /// <summary>The version, three numbers joined by dots. A constant, because asking the assembly costs more than answering <c>--version</c>; a test holds the two equal.</summary>
    public const string Text = "0.1.0";
}
