using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Services.Publishing;

/// <summary>What the page of a publication shows.</summary>
internal sealed record PublishedContent(
    PublishAsked Asked,
    string Title,
    Piece Piece,
    IReadOnlyList<PublishedPicture> Pictures,
    WorkPlan Work,
    IReadOnlyDictionary<string, string> StepPictures,
    ImmutableArray<MaterialRow> Materials,
    IReadOnlyList<(string Path, string Says)> Files
);

/// <summary>Writes <c>index.html</c>: one page that is read without scripts and without a network.</summary>
internal sealed class PublishedPage(PublishedContent content)
{
    private const string Caution =
        "Saws, routers and finishes can hurt you. Read your tools' manuals first: where they differ from this plan, follow them. "
        + "Wear eye and hearing protection, keep guards on, and measure your own boards before you cut. Anchor tall pieces and "
        + "pieces with drawers to the wall. Local codes and a licensed professional come before anything said here.";

    private static readonly (string Id, string Name)[] Sections =
    [
        ("drawings", "Drawings"),
        ("parts", "Cut list"),
        ("materials", "What to buy"),
        ("steps", "How to build it"),
        ("resize", "Resize it"),
        ("files", "Files"),
    ];

    private readonly Html html = new();

    private Piece Piece => content.Piece;

    private PublishAsked Asked => content.Asked;

    /// <summary>The page.</summary>
    public string Write()
    {
        Head();
        html.Raw("<main>");
        Photos();
        Figure(content.Pictures[0]);
        Safety();
        Drawings();
        Parts();
        Materials();
        Shopping();
        new PublishedSteps(html, content).Add();
        Resize();
        Files();
        html.Raw("</main>");
        Foot();
        return html.Raw("</body>").Raw("</html>").ToString();
    }

    private void Head()
    {
        html.Raw("<!DOCTYPE html>").Raw("<html lang=\"en\">").Raw("<head>").Raw("<meta charset=\"utf-8\">");
        html.Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        html.Add("title", content.Title);
        html.Raw($"<meta name=\"description\" content=\"{Html.Escape(Asked.Design.Says)}\">");
        if (Asked.By.Length > 0)
            html.Raw($"<meta name=\"author\" content=\"{Html.Escape(Asked.By)}\">");
        if (Asked.License.Address is { } address)
            html.Raw($"<link rel=\"license\" href=\"{address}\">");
        html.Raw("<style>")
            .Raw(PublishedAssets.Style)
            .Raw(Drawing.Svg.SvgStyle.Sheet)
            .Raw("</style>")
            .Raw("</head>")
            .Raw("<body>");
        html.Raw("<header>").Add("h1", content.Title);
        html.Add("p", Asked.By.Length > 0 ? "By " + Asked.By : "", "faded");
        html.Add("p", Outside, "size").Add("p", Asked.Design.Says);
        html.Raw("<nav aria-label=\"On this page\"><ul>");
        foreach (var (id, name) in Sections)
            html.Raw($"<li><a href=\"#{id}\">{name}</a></li>");
        html.Raw("</ul></nav></header>");
    }

    private void Photos()
    {
        if (Asked.Photos.IsEmpty)
            return;
        html.Raw("<section class=\"photos\" aria-label=\"Photos\">");
        foreach (var (at, photo) in Asked.Photos.Index())
        {
            var alt = string.Create(CultureInfo.InvariantCulture, $"{content.Title}, photo {at + 1} of {Asked.Photos.Length}");
            html.Raw($"<img src=\"{PublicationWriter.PhotoPath(at, photo)}\" alt=\"{Html.Escape(alt)}\">");
        }

        html.Raw("</section>");
    }

    private void Safety()
    {
        html.Raw($"<p class=\"safety\"><b>Safety:</b> {Html.Escape(Caution)}</p>");
        foreach (var warning in PieceJudge.Of(Piece).Where(one => one.Severity > Severity.Fine))
            html.Raw(
                $"<p class=\"safety\"><b>{Html.Escape(SeverityWords.Of(warning.Severity))}:</b> {Html.Escape(warning.Text)}</p>"
            );
    }

    private void Drawings()
    {
        Heading("drawings", "Drawings");
        foreach (var picture in content.Pictures.Skip(1))
            Figure(picture);
    }

    private void Figure(PublishedPicture picture)
    {
        html.Raw("<figure>");
        html.Raw(picture.Narrow is null ? picture.Wide : $"<div class=\"wide\">{picture.Wide}</div>");
        if (picture.Narrow is { } narrow)
            html.Raw($"<div class=\"narrow\">{narrow}</div>");
        html.Add("figcaption", picture.Caption).Raw("</figure>");
    }

    private void Parts()
    {
        Heading("parts", "Cut list");
        html.Add("p", "Finished sizes, joints included. “Cut to” is larger where a part is trimmed later.");
        html.Table(
            "Parts",
            "parts",
            [
                ("Mark", "mark"),
                ("Part", ""),
                ("Pieces", "figure"),
                ("Length", "figure"),
                ("Width", "figure"),
                ("Thick", "figure thick"),
                ("Cut to", "figure"),
                ("Material", ""),
            ],
            Piece.Parts.Select(Row)
        );
    }

    private string[] Row(PiecePart part) =>
        [
            part.Id,
            part.Purpose switch
            {
                PartPurpose.Spacer => part.Name + " (spacer, from scrap)",
                PartPurpose.Practice => part.Name + " (test piece)",
                _ => part.Name,
            },
            part.Quantity.ToString(CultureInfo.InvariantCulture),
            Say(part.Length.Value),
            Say(part.Width.Value),
            Say(part.Thickness.Value),
            part.RoughLength == part.Length.Value && part.RoughWidth == part.Width.Value
                ? ""
                : $"{Say(part.RoughLength)} × {Say(part.RoughWidth)}",
            part.Material.Name,
        ];

    private void Materials()
    {
        Heading("materials", "What to buy");
        html.Add(
            "p",
            "Boards and sheets in sizes that stores usually have, enough for the packet's cut plan. Yours may sell others."
        );
        html.Table(
            "Materials",
            "materials",
            [("For", ""), ("Item", ""), ("Size", ""), ("Quantity", "figure")],
            content.Materials.Select(one =>
                new[] { one.Kind, one.Item, one.Size, one.Quantity.ToString(CultureInfo.InvariantCulture) }
            )
        );
    }

    private void Shopping()
    {
        if (Asked.Shopping.IsEmpty)
            return;
        html.Add("h2", "What the author used");
        html.Table(
            "Bought and taken",
            "shopping",
            [("Item", ""), ("Size", ""), ("Quantity", "figure"), ("Each", "figure"), ("From", "")],
            Asked.Shopping.Select(one =>
                new[] { one.Item, one.Size, one.Quantity.ToString(CultureInfo.InvariantCulture), one.Price, one.From }
            )
        );
    }

    private void Resize()
    {
        Heading("resize", "Resize it");
        html.Add(
            "p",
            "Import design.json under Designs in Shop Planner, set your own sizes, and parts, drawings and cut plan follow."
        );
        html.Table(
            "What can be changed",
            "sizes",
            [("Size", ""), ("Here", "figure"), ("From", "figure"), ("To", "figure")],
            Asked.Design.Dimensions.Select(one => new[] { one.Label, one.Value, one.Least ?? "", one.Most ?? "" })
        );
    }

    private void Files()
    {
        Heading("files", "Files");
        html.Raw("<ul>");
        foreach (var (path, says) in content.Files)
            html.Raw($"<li><a href=\"{path}\">{path}</a>: {Html.Escape(says)}</li>");
        html.Raw("</ul>");
    }

    private void Foot()
    {
        var license = Asked.License;
        var name = license.Address is { } address
            ? $"<a rel=\"license\" href=\"{address}\">{Html.Escape(license.Name)} ({license.Id})</a>"
            : Html.Escape(license.Name);
        html.Raw("<footer>").Raw($"<p>{name}. {Html.Escape(license.Says)}</p>");
        html.Add("p", $"Planned with Shop Planner, {Asked.Day.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture)}.");
        html.Raw("</footer>");
    }

    private void Heading(string id, string words) => html.Raw($"<h2 id=\"{id}\">{words}</h2>");

    private string Say(Length length) => LengthFormat.WithUnit(length, Piece.Unit);

    private string Outside =>
        string.Join(" × ", new[] { Piece.Outside.Dx, Piece.Outside.Dy, Piece.Outside.Dz }.Select(Say)) + " (wide × deep × high)";
}
