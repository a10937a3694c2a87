using System.Globalization;
using System.Text.Json;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Packets.Labels;

namespace ShopPlanner.Cli.Labels;

/// <summary>One run of the command: read, lay out, write.</summary>
internal static class LabelsRun
{
    private const string RequestFormat = "shop-planner/cut-request";

    /// <summary>The exit status.</summary>
    public static int Run(string from, string to, LabelsAsked asked, IReadOnlyList<string> set)
    {
        var target = TextOutput.At(to, "labels", from, "input");
        var changed = DesignChanges.Of(set);
        var content = DocumentInput.Read(
            from,
            "design or cut request",
            stream => CappedReading.Take(stream, DesignJson.MostBytes)
        );
        var (title, unit, labels, faults) = IsRequest(content) ? OfRequest(content, from, changed) : OfDesign(content, changed);
        if (faults.Any())
            return DesignInput.Refused(faults, changed);
        var nudge = (asked.Nudge ?? ",").Split(',');
        if (nudge.Length != 2)
            throw new Complaint($"--nudge: '{asked.Nudge}' is not two distances: write right and down, as in 1mm,-0.5mm");
        var (print, wrong) = LabelPrint.Read(asked.Sheet, asked.Start, nudge[0], nudge[1], unit);
        if (print is null)
            return DesignInput.Refused(wrong.Select(fault => fault.At(Option(fault.Field))), changed);
        if (labels.Count == 0)
            throw new Complaint($"'{from}' has no parts to label");
        using var file = new MemoryStream();
        LabelWriter.Write(
            asked.HasCodes ? [.. labels.Select(Coded)] : labels,
            print,
            $"Labels, {title}",
            DateOnly.FromDateTime(DateTime.Now),
            file
        );
        target.Write(file.ToArray());
        return ExitStatus.Done;
    }

    private static string Option(string field) => field is "right" or "down" ? $"--nudge {field}" : "--" + field;

    // Without a server there is no address to lead to.
    private static Label Coded(Label label) => label with { Code = $"{label.Mark} {label.Name}, {label.Size}, {label.Of}" };

    private static bool IsRequest(ReadOnlyMemory<byte> content)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("format", out var format)
                && format.ValueKind == JsonValueKind.String
                && format.GetString() == RequestFormat;
        }
        catch (JsonException)
        {
            // The reader of designs says where it is broken.
            return false;
        }
    }

    private static (string, LengthUnit, IReadOnlyList<Label>, IEnumerable<Fault>) OfDesign(
        ReadOnlyMemory<byte> content,
        Dictionary<string, string> changed
    )
    {
        var (document, faults) = DesignJson.Read(content);
        if (document is null)
            return ("", default, [], faults);
        var evaluation = DesignEvaluator.Evaluate(document, changed);
        if (evaluation.Piece is not { } piece)
            return ("", default, [], evaluation.Faults);
        return (piece.Name, piece.Unit, [.. PartLabels.Of(piece).Select(one => Label.For(one, piece.Unit, piece.Name))], []);
    }

    private static (string, LengthUnit, IReadOnlyList<Label>, IEnumerable<Fault>) OfRequest(
        ReadOnlyMemory<byte> content,
        string from,
        Dictionary<string, string> changed
    )
    {
        if (changed.Count > 0)
            throw new Complaint("--set: a cut request has no named dimensions: leave it out");
        var (request, faults) = CutRequestJson.Read(content);
        if (request is null)
            return ("", default, [], faults);
        var name = from == DocumentInput.StandardInput ? "" : Path.GetFileNameWithoutExtension(from);
        return (name, request.Unit, [.. request.Parts.SelectMany(part => OfPart(part, request, name))], []);
    }

    private static IEnumerable<Label> OfPart(CutPart part, CutRequest request, string name)
    {
        var thick = request.Materials.Single(material => material.Id == part.Material).Thickness;
        var (length, width) = (part.FinishedLength ?? part.Length, part.FinishedWidth ?? part.Width);
        var size = thick is { } deep
            ? Label.SizeOf(request.Unit, length, width, deep)
            : Label.SizeOf(request.Unit, length, width);
        return Enumerable
            .Range(1, part.Quantity)
            .Select(n => new Label(
                part.Quantity == 1 ? part.Id : part.Id + n.ToString(CultureInfo.InvariantCulture),
                part.Name,
                size,
                name
            )
            {
                Note = part.PracticeFor is null ? "" : "test piece",
            });
    }
}
