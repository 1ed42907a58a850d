using System.Globalization;
using Cake.Core.Diagnostics;

namespace Cartwright.Packages.Tests.Aliases;

/// <summary>Keeps what is logged.</summary>
internal sealed class RecordedLog : ICakeLog
{
    public Verbosity Verbosity { get; set; } = Verbosity.Normal;

    public List<(Verbosity Verbosity, LogLevel Level, string Text)> Lines { get; } = [];

    public void Write(Verbosity verbosity, LogLevel level, string format, params object[] args) =>
        Lines.Add((verbosity, level, string.Format(CultureInfo.InvariantCulture, format, args)));
}
