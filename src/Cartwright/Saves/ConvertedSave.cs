namespace Cartwright.Saves;

/// <summary>A save in its new form, proved to lead back.</summary>
/// <param name="Bytes">The new file.</param>
/// <param name="MemoryBefore">Bytes of the memory in the old file.</param>
/// <param name="MemoryAfter">Bytes of the memory in the new file.</param>
/// <param name="Cut">What was cut off behind the contents; null where nothing was.</param>
/// <param name="ClockDropped">Bytes of the clock's record that are not in the new file; the one thing the way back does not bring.</param>
public sealed record ConvertedSave(ReadOnlyMemory<byte> Bytes, int MemoryBefore, int MemoryAfter, SavePad? Cut, int ClockDropped);
