using System.Runtime.CompilerServices;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Materials;

/// <summary>Finds materials by what people type for them.</summary>
public static class MaterialMatch
{
    /// <summary>The most that are offered: more would be the list itself.</summary>
    public const int MostOffered = 8;

    private static readonly ConditionalWeakTable<string, MaterialWords> Known = [];

    /// <summary>
    /// Returns the one material that is meant, or those that may be, in the order given; none where nothing matches. A name
    /// typed in full wins over all others.
    /// </summary>
    /// <param name="typed">A name, or words and sizes of it in any order: <c>1x12 pine</c>, <c>MDF 3/4</c>.</param>
    /// <param name="materials">The materials to look among.</param>
    /// <param name="name">Returns a material's name.</param>
    public static IReadOnlyList<T> Find<T>(string typed, IEnumerable<T> materials, Func<T, string> name)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(name);
        var all = materials.ToList();
        var key = TextRules.Key(typed);
        if (all.FindIndex(one => TextRules.Key(name(one)) == key) is >= 0 and var exact)
            return [all[exact]];
        var wanted = MaterialWords.Of(typed);
        var found = all.Where(one => WordsOf(name(one)).Have(wanted)).ToList();
        var same = found.Where(one => WordsOf(name(one)).Equal(wanted)).ToList();
        return same.Count == 1 ? same : found;
    }

    private static MaterialWords WordsOf(string name) => Known.GetValue(name, MaterialWords.Of);
}
