using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Designs;

/// <summary>A design and the values set for it, as commands take them.</summary>
internal static class DesignInput
{
    /// <summary>Reads a design.</summary>
    /// <param name="from">A file, or <c>-</c> for standard input.</param>
    public static DesignReading Read(string from) =>
        DocumentInput.Read(from, "design", stream => DesignJson.Read(CappedReading.Take(stream, DesignJson.MostBytes)));

    /// <summary>Reads a design and works it out. What is wrong with it is printed.</summary>
    /// <param name="from">A file, or <c>-</c> for standard input.</param>
    /// <param name="set">Other values for its dimensions.</param>
    /// <returns>The piece; null where it is refused.</returns>
    public static Piece? WorkOut(string from, IReadOnlyList<string> set)
    {
        var changed = DesignChanges.Of(set);
        var (document, faults) = Read(from);
        Piece? piece = null;
        if (document is not null)
            (piece, faults) = DesignEvaluator.Evaluate(document, changed);
        if (piece is null)
            Refused(faults, changed);
        return piece;
    }

    /// <summary>Prints why a piece can't be built, a line for each reason, and gives the exit status. What was asked for is
    /// written all the same, so that it can be looked at; whoever goes on with it has been told.</summary>
    public static int Told(IEnumerable<(Severity Severity, string Text)> findings)
    {
        var reasons = findings.Where(one => one.Severity == Severity.Fails).ToList();
        foreach (var (severity, text) in reasons)
            Complaint.Print($"{SeverityWords.Of(severity)}: {text}");
        return reasons.Count > 0 ? ExitStatus.Refused : ExitStatus.Done;
    }

    /// <summary>Prints faults, a line each, and gives the exit status for them. A fault of a value that was set names the option.
    /// </summary>
    public static int Refused(IEnumerable<Fault> faults, Dictionary<string, string> changed)
    {
        foreach (var fault in faults)
            Complaint.Print(DesignChanges.Place(fault, changed).ToString());
        return ExitStatus.Refused;
    }
}
