using System.Collections.Immutable;
using Cartwright.Boards;

namespace Cartwright.Proofs;

/// <summary>What a cartridge should hold.</summary>
/// <param name="File">The file it comes from, as the user named it.</param>
/// <param name="Board">The board; null where nothing but a chip is known.</param>
/// <param name="Sites">Its chips, in the order of the board.</param>
/// <param name="Regions">What the cartridge shows through its edge; empty where no board is known.</param>
public sealed record ExpectedCart(string File, Board? Board, ImmutableArray<ExpectedSite> Sites, ImmutableArray<ExpectedRegion> Regions);
