namespace Cartwright.Patching;

/// <summary>A stretch of the target that an action could copy.</summary>
/// <param name="Command">The action.</param>
/// <param name="From">The first byte to copy, of the base or of the target.</param>
/// <param name="To">The first byte of the target it makes.</param>
/// <param name="Length">Bytes.</param>
/// <param name="Gain">Bytes of the patch it saves.</param>
internal readonly record struct BpsMatch(BpsCommand Command, int From, int To, int Length, int Gain);
