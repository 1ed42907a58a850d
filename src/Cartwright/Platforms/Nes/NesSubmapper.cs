namespace Cartwright.Platforms.Nes;

/// <summary>One submapper: a variant of a mapper that its number alone does not tell.</summary>
/// <param name="Mapper">The mapper number.</param>
/// <param name="Number">The submapper, 0 to 15.</param>
/// <param name="Meaning">What it says of the board.</param>
public sealed record NesSubmapper(int Mapper, int Number, string Meaning);
