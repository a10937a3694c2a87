using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cli.Designs;

/// <summary>Other values for a design's named dimensions, as <c>--set</c> gives them.</summary>
internal static class DesignChanges
{
    /// <summary>Texts by dimension.</summary>
    public static Dictionary<string, string> Of(IReadOnlyList<string> set)
    {
        var changed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var text in set)
        {
            var sign = text.IndexOf('=', StringComparison.Ordinal);
            var name = text[..Math.Max(sign, 0)].Trim();
            if (name.Length == 0)
                throw new Complaint($"--set: '{text}' is not name=value, as in width=30");
            if (!changed.TryAdd(name, text[(sign + 1)..].Trim()))
                throw new Complaint($"--set: '{name}' is set twice: set it once");
        }

        return changed;
    }

    /// <summary>A fault of a value that was set names the dimension alone.</summary>
    public static Fault Place(Fault fault, Dictionary<string, string> changed) =>
        changed.ContainsKey(fault.Field) ? fault.At("--set " + fault.Field) : fault;
}
