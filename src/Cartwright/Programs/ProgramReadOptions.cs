namespace Cartwright.Programs;

/// <summary>How a program file is to be understood where the file alone cannot say.</summary>
public sealed record ProgramReadOptions
{
    /// <summary>Bytes per address of an Intel HEX or S-record file: 1, or 2 when its addresses count 16-bit words. Default 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is neither 1 nor 2.</exception>
    public int AddressUnit
    {
        get;
        init => field = value is 1 or 2 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "1 or 2");
    } = 1;

    /// <summary>Which address of an ELF load segment counts. Default <see cref="ElfLoad.Physical"/>.</summary>
    public ElfLoad ElfLoad { get; init; } = ElfLoad.Physical;

    /// <summary>Most bytes from the lowest to the highest address of one file, 1 to <see cref="Array.MaxLength"/>. Default 64 MiB.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range.</exception>
    public long LargestSpan
    {
        get;
        init => field = value >= 1 && value <= Array.MaxLength ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "1 to Array.MaxLength");
    } = 64L << 20;
}
