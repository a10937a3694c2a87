using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Cli.Parts;

/// <summary>One run of the command: read, work out, write.</summary>
internal static class PartsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, IReadOnlyList<string> set, PartsFormat format, string? to)
    {
        var target = TextOutput.At(to, "list", from, "design");
        var changed = DesignChanges.Of(set);
        var (document, faults) = DesignInput.Read(from);
        if (document is null)
            return DesignInput.Refused(faults, changed);
        var evaluation = DesignEvaluator.Evaluate(document, changed);
        if (evaluation.Piece is not { } piece)
            return DesignInput.Refused(evaluation.Faults, changed);
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

    // The list is written all the same, so that it can be looked at; whoever goes on with it has been told.
    private static bool Impossible(Piece piece)
    {
        var reasons = PieceJudge.Of(piece).Where(one => one.Severity == Severity.Fails).ToList();
        foreach (var reason in reasons)
            Complaint.Print($"{SeverityWords.Of(reason.Severity)}: {reason.Text}");
        return reasons.Count > 0;
    }
}
