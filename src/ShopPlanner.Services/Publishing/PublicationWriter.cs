using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Services.Publishing;

/// <summary>A line of what to buy.</summary>
/// <param name="Kind">Wood, hardware or finish.</param>
/// <param name="Item">What.</param>
/// <param name="Size">As sold; empty where its name says it.</param>
/// <param name="Quantity">How many.</param>
internal sealed record MaterialRow(string Kind, string Item, string Size, int Quantity);

/// <summary>Makes the files of a publication.</summary>
public static class PublicationWriter
{
    /// <summary>The longest heading or name of an author, in characters.</summary>
    public const int MostCharacters = 300;

    private static readonly string[] MaterialHeading = ["for", "item", "size", "quantity"];

    private static readonly DrawingRoom StepRoom = DrawingRoom.PieceOnPhone with { Height = 260 };

    /// <summary>Publishes a design. The same is given the same files.</summary>
    /// <param name="asked">What is published.</param>
    public static PublicationMade Write(PublishAsked asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var (piece, faults) = DesignEvaluator.Evaluate(asked.Design, ImmutableDictionary<string, string>.Empty);
        if (piece is null)
            return new(null, faults);
        var title = asked.Title.Trim().Length > 0 ? asked.Title.Trim() : piece.Name;
        return new(new Publication(title, [.. Files(asked, piece, title)]), []);
    }

    /// <summary>Where a photo lies.</summary>
    internal static string PhotoPath(int at, CleanPhoto photo) =>
        string.Create(CultureInfo.InvariantCulture, $"photos/photo-{at + 1}.{photo.Ending}");

    private static IEnumerable<PublishedFile> Files(PublishAsked asked, Piece piece, string title)
    {
        var work = WorkPlanner.Of(piece, asked.Choices);
        var pictures = PublishedPicture.Of(piece);
        var steps = StepPictures(piece, work);
        var plan = UsualPlan.Of(piece, title);
        ImmutableArray<MaterialRow> materials = [.. Materials(plan, piece, work)];
        var content = new PublishedContent(
            asked,
            title,
            piece,
            pictures,
            work,
            steps.ToDictionary(one => one.Step, one => one.File.Path),
            materials,
            Listed
        );
        yield return Text(Publication.Index, new PublishedPage(content).Write());
        foreach (var picture in pictures)
            yield return Text(picture.Path, picture.Alone);
        foreach (var (_, file) in steps)
            yield return file;
        foreach (var (at, photo) in asked.Photos.Index())
            yield return new(PhotoPath(at, photo), photo.Bytes);
        yield return new("packet.pdf", plan.Packet(asked.Paper, asked.Day, asked.Choices));
        yield return Table("cut-list.csv", PartsCsv.Write(piece));
        yield return Table("materials.csv", MaterialTable(materials));
        yield return Text("design.json", DesignJson.Write(asked.Design));
        yield return Text("LICENSE.txt", License(asked, title));
        foreach (var letters in PublishedAssets.Letters())
            yield return letters;
    }

    private static readonly (string Path, string Says)[] Listed =
    [
        ("packet.pdf", "the whole plan to print: cuts, layouts, joints, steps"),
        ("cut-list.csv", "the parts as a table"),
        ("materials.csv", "what to buy as a table"),
        ("design.json", "the design, to resize it in Shop Planner"),
        ("LICENSE.txt", "what you may do with this plan"),
    ];

    private static List<(string Step, PublishedFile File)> StepPictures(Piece piece, WorkPlan work)
    {
        var made = new List<(string, PublishedFile)>();
        foreach (var (at, step) in work.Steps.Index())
            if (WorkPicture.Draw(piece, step, StepRoom) is { } drawing)
            {
                var path = string.Create(CultureInfo.InvariantCulture, $"pictures/step-{at + 1:00}.svg");
                made.Add((step.Id, Text(path, SvgWriter.Write(drawing, "step", alone: true))));
            }

        return made;
    }

    private static IEnumerable<MaterialRow> Materials(UsualPlan plan, Piece piece, WorkPlan work) =>
        [
            .. plan.Purchases().Select(one => new MaterialRow("Wood", one.Item, one.Size, one.Quantity)),
            .. piece.Hardware.Select(one => new MaterialRow("Hardware", one.Name, "", one.Quantity)),
            .. (work.Finish?.Buy ?? []).Select(one => new MaterialRow("Finish", one.Name, "", one.Quantity)),
        ];

    private static string MaterialTable(IEnumerable<MaterialRow> rows)
    {
        using var text = new StringWriter();
        using (var csv = CsvWriter.Create(text, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord(MaterialHeading);
            foreach (var row in rows)
                csv.WriteRecord([
                    row.Kind,
                    FormulaGuard.Quote(row.Item),
                    FormulaGuard.Quote(row.Size),
                    row.Quantity.ToString(CultureInfo.InvariantCulture),
                ]);
        }

        return text.ToString();
    }

    private static string License(PublishAsked asked, string title)
    {
        var by = asked.By.Trim().Length > 0 ? $", by {asked.By.Trim()}" : "";
        var license = asked.License;
        string?[] lines =
        [
            $"{title}{by}, {asked.Day.ToString("yyyy", CultureInfo.InvariantCulture)}",
            "",
            license.Address is null ? license.Name : $"SPDX-License-Identifier: {license.Id}",
            license.Address is null ? null : $"{license.Name}: {license.Address}",
            license.Says,
            "",
            "The letters in the folder fonts are Source Sans 3, SIL Open Font License 1.1: see fonts/OFL.txt.",
        ];
        return string.Concat(lines.OfType<string>().Select(line => line + "\n"));
    }

    // Without the mark at its start spreadsheets take the text for another encoding.
    private static PublishedFile Table(string path, string text) =>
        new(path, (byte[])[.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)]);

    private static PublishedFile Text(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));
}
