using System.Globalization;

namespace Cartwright.Cli;

/// <summary>Shows on a terminal which chip is searched, and for how long; nothing where there is none.</summary>
internal sealed class ProveProgress : IDisposable
{
    private const int Second = 1000;

    private readonly Action<string>? _show;
    private readonly Timer? _timer;
    private readonly Lock _lock = new();
    private string _what = "";
    private int _seconds;
    private int _shown;

    public ProveProgress(TextWriter errors)
    {
        if (ReferenceEquals(errors, Console.Error) && !Console.IsErrorRedirected)
        {
            _show = errors.Write;
            _timer = new Timer(_ => Tick(), null, Second, Second);
        }
    }

    public void Begin(string? unit, string site)
    {
        lock (_lock)
        {
            (_what, _seconds) = (unit is null ? site : $"{unit}, {site}", 0);
        }
    }

    /// <summary>Clears the line, so that what follows stands alone.</summary>
    public void End()
    {
        lock (_lock)
        {
            _timer?.Change(Timeout.Infinite, Timeout.Infinite);
            Show("");
            _what = "";
        }
    }

    public void Dispose()
    {
        End();
        _timer?.Dispose();
    }

    private void Tick()
    {
        lock (_lock)
        {
            if (_what.Length > 0)
            {
                Show(string.Create(CultureInfo.InvariantCulture, $"{_what}: searching, {++_seconds} s; Ctrl-C stops"));
            }
        }
    }

    private void Show(string text)
    {
        if (_shown > 0 || text.Length > 0)
        {
            _show?.Invoke($"\r{text.PadRight(_shown)}{(text.Length == 0 ? "\r" : "")}");
            _shown = text.Length;
        }
    }
}
