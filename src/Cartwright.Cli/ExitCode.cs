namespace Cartwright.Cli;

/// <summary>What the command tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done, and nothing is wrong.</summary>
    public const int Done = 0;

    /// <summary>Done, with an error-level finding about the data.</summary>
    public const int Found = 1;

    /// <summary>The request could not be carried out.</summary>
    public const int Refused = 2;

    /// <summary>The program itself failed.</summary>
    public const int Failed = 3;
}
