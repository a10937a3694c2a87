using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cli.Parts;

/// <summary>One run of the command: read, work out, write.</summary>
internal static class PartsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, IReadOnlyList<string> set, PartsFormat format, string? to)
    {
        var target = TextOutput.At(to, "list", from, "design");
        if (DesignInput.WorkOut(from, set) is not { } piece)
            return ExitStatus.Refused;
        target.Write(Text(piece, format));
        return DesignInput.Told(PieceJudge.Of(piece).Select(one => (one.Severity, one.Text)));
    }

    private static string Text(Piece piece, PartsFormat format) =>
        format switch
        {
            PartsFormat.Csv => PartsCsv.Write(piece),
            PartsFormat.CutRequest => CutRequestJson.Write(PieceRequest.Of(piece)),
            _ => PartsJson.Write(piece),
        };
}
