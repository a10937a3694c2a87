using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Totals;

/// <summary>What of a part gets a finish.</summary>
/// <param name="Faces">Of its two faces, length by width.</param>
/// <param name="Edges">Of its two long edges, length by thickness.</param>
/// <param name="Ends">Of its two ends, width by thickness.</param>
public sealed record FinishFaces(int Faces, int Edges, int Ends)
{
    /// <summary>All six sides, said to be so.</summary>
    public static readonly FinishFaces All = new(2, 2, 2);

    /// <summary>All six sides, since nobody said which.</summary>
    public static readonly FinishFaces NotSaid = All with { IsSaid = false };

    /// <summary>Whether somebody said which sides; where nobody did, all are counted.</summary>
    public bool IsSaid { get; init; } = true;

    /// <summary>Reads a design's words for it: <c>both faces, front edge</c>; empty for nothing. Remarks are passed
    /// over.</summary>
    /// <param name="words">As a part has them.</param>
    public static FinishFaces Of(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var sum = new FinishFaces(0, 0, 0);
        foreach (var word in words.Split(", ", StringSplitOptions.RemoveEmptyEntries))
            sum = word switch
            {
                "all faces" => All,
                "both faces" => sum with { Faces = 2 },
                "all edges" => sum with { Edges = 2, Ends = 2 },
                "edges" => sum with { Edges = 2 },
                _ when word.EndsWith(" face", StringComparison.Ordinal) => sum with { Faces = 1 },
                _ when word.EndsWith(" edge", StringComparison.Ordinal) => sum with { Edges = 1 },
                _ => sum,
            };
        // A remark alone says nothing of the faces.
        return words.Length > 0 && sum.IsNone ? NotSaid : sum;
    }

    /// <summary>Whether nothing of the part gets a finish.</summary>
    public bool IsNone => Faces + Edges + Ends == 0;

    /// <summary>Area of one part of this size.</summary>
    public Area Of(Length length, Length width, Length thickness) =>
        (Area.Of(length, width) * Faces) + (Area.Of(length, thickness) * Edges) + (Area.Of(width, thickness) * Ends);

    /// <summary>In words: <c>2 faces, 1 long edge</c>.</summary>
    public string Told
    {
        get
        {
            var told = new[] { Count(Faces, "face"), Count(Edges, "long edge"), Count(Ends, "end") };
            return string.Join(", ", told.Where(word => word.Length > 0));
        }
    }

    private static string Count(int count, string of) =>
        count switch
        {
            0 => "",
            1 => "1 " + of,
            _ => "2 " + of + "s",
        };
}
