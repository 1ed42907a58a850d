namespace Cartwright.Platforms.MasterSystem;

/// <summary>What decimal digits of the author tag stand for.</summary>
public enum BcdForm
{
    /// <summary>Major and minor version.</summary>
    Version,

    /// <summary>Day, month, and the year with its lower pair of digits first.</summary>
    Date,
}
