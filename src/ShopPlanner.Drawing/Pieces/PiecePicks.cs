namespace ShopPlanner.Drawing.Pieces;

/// <summary>What can be chosen in a drawing on a page: each kind of part that is seen, and bays.</summary>
/// <param name="Part">Letter of the chosen part; null for none.</param>
/// <param name="Bay">Path of the chosen bay; null for none.</param>
/// <param name="Bays">Paths of the bays that can be chosen, with the names that are read aloud.</param>
public sealed record PiecePicks(string? Part, string? Bay, IReadOnlyDictionary<string, string> Bays);
