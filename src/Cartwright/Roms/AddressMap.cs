namespace Cartwright.Roms;

/// <summary>Turns the console's addresses into places of the ROM.</summary>
public abstract class AddressMap
{
    /// <summary>What an address of this console looks like, for messages: "bank:address such as 03:4000".</summary>
    public abstract string Forms { get; }

    /// <summary>Bytes at one address: 2 where the processor counts words of 16 bits. Addresses of program files count bytes all the same.</summary>
    public virtual int Unit => 1;

    /// <summary>Finds an address.</summary>
    /// <param name="address">The address; without a bank it may be a whole linear number as program files hold it.</param>
    /// <param name="statedSize">Size in bytes the manifest states for a region; null where it says <c>fit</c>.</param>
    public abstract AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize);
}
