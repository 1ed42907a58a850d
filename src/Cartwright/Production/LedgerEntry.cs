using System.Collections.Immutable;

namespace Cartwright.Production;

/// <summary>What the ledger says of one unit.</summary>
/// <param name="Serial">Its serial number.</param>
/// <param name="Values">Its fields as a label shows them, by name.</param>
/// <param name="Label">The text of its label; empty for none.</param>
/// <param name="BoardRevision">The revision of its circuit board; empty when not said.</param>
/// <param name="Cart">SHA-256 of the ROM all units share.</param>
/// <param name="Files">Its files.</param>
public sealed record LedgerEntry(long Serial, ImmutableArray<KeyValuePair<string, string>> Values, string Label, string BoardRevision, string Cart, ImmutableArray<LedgerFile> Files);
