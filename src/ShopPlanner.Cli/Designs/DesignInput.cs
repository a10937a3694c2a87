using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cli.Designs;

/// <summary>A design and the values set for it, as commands take them.</summary>
internal static class DesignInput
{
    /// <summary>Reads a design.</summary>
    /// <param name="from">A file, or <c>-</c> for standard input.</param>
    public static DesignReading Read(string from) =>
        DocumentInput.Read(from, "design", stream => DesignJson.Read(CappedReading.Take(stream, DesignJson.MostBytes)));

    /// <summary>Reads values, each <c>name=value</c>.</summary>
    /// <exception cref="Complaint">One is not, or a name is set twice.</exception>
    public static Dictionary<string, string> Changes(IReadOnlyList<string> set)
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

    /// <summary>Prints faults, a line each, and gives the exit status for them. A fault of a value that was set names the option.
    /// </summary>
    public static int Refused(IEnumerable<Fault> faults, IReadOnlyDictionary<string, string> changed)
    {
        foreach (var fault in faults)
            Complaint.Print((changed.ContainsKey(fault.Field) ? fault.At("--set " + fault.Field) : fault).ToString());
        return ExitStatus.Refused;
    }
}
