namespace Cartwright.Cake;

/// <summary>How an existing image is read and put right.</summary>
public sealed record ImageSettings
{
    /// <summary>Id of the platform the image is of, whatever it looks like; null to find it out.</summary>
    public string? Platform { get; init; }

    /// <summary>Checksums and fields that mending puts right although what they hold may be meant.</summary>
    public IReadOnlyCollection<string> Also { get; init; } = [];

    /// <summary>Mending takes off bytes in front that are not part of the image.</summary>
    public bool Strip { get; init; }

    /// <summary>Mending lengthens an image that has no legal size to the next one.</summary>
    public bool FillUp { get; init; }

    /// <summary>False to leave size codes and checksums as a patch leaves them.</summary>
    public bool MendPatched { get; init; } = true;
}
