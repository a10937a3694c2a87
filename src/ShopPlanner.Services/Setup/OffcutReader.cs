using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Setup;

/// <summary>An offcut that was understood.</summary>
internal sealed record OffcutRead(int Number, StoredMaterial Material, Length Length, Length Width, string Note);

/// <summary>Reads offcuts, one a line.</summary>
internal sealed partial class OffcutReader(MaterialIndex materials, LengthUnit unit)
{
    /// <summary>The most lines at once.</summary>
    public const int MostLines = 200;

    /// <summary>Returns what was understood; what is wrong adds a fault that names its line.</summary>
    public List<OffcutRead> Read(string text, List<Fault> faults)
    {
        var read = new List<OffcutRead>();
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i < lines.Length && faults.Count < 100; i++)
            if (lines[i].Trim() is { Length: > 0 } line && Line(line, i + 1, faults) is { } offcut)
                read.Add(offcut);
        if (read.Count > MostLines)
            faults.Add(new Fault("lines", $"{read.Count} lines", $"are too many: write at most {MostLines} at a time"));
        return read;
    }

    private OffcutRead? Line(string line, int number, List<Fault> faults)
    {
        var field = FormattableString.Invariant($"line {number}");
        var comma = line.IndexOf(',', StringComparison.Ordinal);
        var (typed, note) = comma < 0 ? (line, "") : (line[..comma], line[(comma + 1)..].Trim());
        if (TextRules.Line(field, note, TextRules.NoteCharacters) is { } wrong)
            faults.Add(wrong);
        if (Material(typed) is not ({ } material, var size))
        {
            faults.Add(
                Fault.Of(field, line, "names no material on your list: write the material, then the size, like 1x4 pine 33 1/2")
            );
            return null;
        }

        var sides = Times().Split(size);
        var found = new List<Fault>();
        if (sides.Length > 2)
            found.Add(Fault.Of("Size", size, "has more than a length and a width"));
        var (length, width) = PieceReader.Sizes(material, sides[0], sides.Length > 1 ? sides[1] : "", unit, found);
        faults.AddRange(found.Select(fault => fault.At($"{field}, {fault.Field.ToLowerInvariant()}")));
        return found.Count > 0 ? null : new(number, material, length, width, note);
    }

    // As many words as name a material; what follows is its size.
    private (StoredMaterial Material, string Size)? Material(string typed)
    {
        var words = typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        for (var count = words.Length - 1; count > 0; count--)
            if (Find(words[..count]) is { } material)
                return (material, string.Join(' ', words[count..]));
        return null;
    }

    // "1x4 pine" and "pine 1x4" are the same, and so are "birch plywood 3/4" and "3/4 in birch plywood".
    private StoredMaterial? Find(string[] words) =>
        new[] { string.Join(' ', words), string.Join(' ', [.. words[1..], words[0]]) }
            .SelectMany(name => new[] { name, name + " in" })
            .Select(materials.FindTyped)
            .FirstOrDefault(material => material is not null);

    [GeneratedRegex("""(?<=[\d"″])\s*[xX×]\s*(?=\d)""")]
    private static partial Regex Times();
}
