using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cli.Parts;

/// <summary>One run of the command: read, work out, write.</summary>
internal static class PartsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, IReadOnlyList<string> set, PartsFormat format, string? to)
    {
        var target = TextOutput.At(to, "list", from, "design");
        var changed = Changes(set);
        var (document, faults) = DocumentInput.Read(from, "design", Read);
        if (document is null)
            return Refused(faults);
        var evaluation = DesignEvaluator.Evaluate(document, changed);
        if (evaluation.Piece is not { } piece)
            return Refused(evaluation.Faults.Select(fault => Place(fault, changed)));
        target.Write(Text(piece, format));
        return Impossible(piece) ? ExitStatus.Refused : ExitStatus.Done;
    }

    private static string Text(Piece piece, PartsFormat format) =>
        format switch
        {
            PartsFormat.Csv => PartsCsv.Write(piece),
            PartsFormat.CutRequest => CutRequestJson.Write(PieceRequest.Of(piece)),
            _ => PartsJson.Write(piece),
        };

    private static Dictionary<string, string> Changes(IReadOnlyList<string> set)
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

    private static DesignReading Read(Stream stream) => DesignJson.Read(CappedReading.Take(stream, DesignJson.MostBytes));

    // A fault of a value that was set names the dimension alone.
    private static Fault Place(Fault fault, Dictionary<string, string> changed) =>
        changed.ContainsKey(fault.Field) ? fault.At("--set " + fault.Field) : fault;

    private static int Refused(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults)
            Complaint.Print(fault.ToString());
        return ExitStatus.Refused;
    }

    // The list is written all the same, so that it can be looked at; whoever goes on with it has been told.
    private static bool Impossible(Piece piece)
    {
        var reasons = PieceJudge.Of(piece).Where(one => one.Severity == Severity.Fails).ToList();
        foreach (var reason in reasons)
            Complaint.Print($"{SeverityWords.Of(reason.Severity)}: {reason.Text}");
        return reasons.Count > 0;
    }
}
