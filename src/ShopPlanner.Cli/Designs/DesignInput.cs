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

    /// <summary>Prints faults, a line each, and gives the exit status for them. A fault of a value that was set names the option.
    /// </summary>
    public static int Refused(IEnumerable<Fault> faults, Dictionary<string, string> changed)
    {
        foreach (var fault in faults)
            Complaint.Print(DesignChanges.Place(fault, changed).ToString());
        return ExitStatus.Refused;
    }
}
