using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Tests.Pieces;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Templates;

namespace ShopPlanner.Packets.Tests.Templates;

/// <summary>Templates at full size, read back from the printed file by another library.</summary>
public sealed class TemplateWriterTests
{
    private const double Mm = 25.4 / 72;

    // Lines of crosses, as long as they are printed: of a pin's hole, and of a register mark.
    private const double PinCross = 5 + (2 * 6 * Mm),
        Register = 2 * 6 * Mm;

    public static TheoryData<string, PaperSize> Papers =>
        new(BuiltInPieces.Names.SelectMany(name => new[] { (name, PaperSize.Letter), (name, PaperSize.A4) }));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_sheet_has_a_ruler_of_100_mm_and_4_in_and_nothing_comes_near_the_edge(string design, PaperSize paper)
    {
        var templates = Of(design);
        Assert.SkipWhen(templates.Count == 0, "no part of it is drilled or shaped");
        var pages = ReadPaper.Pages(Print(templates, paper));
        Assert.Equal(templates.Sum(one => TemplateWriter.Sheets(one, paper)), pages.Count);
        Assert.All(
            pages,
            page =>
            {
                var scales = page.Lines.Where(line => line.IsLevel && line.Y > page.High - 30).Select(line => line.Long).ToList();
                Assert.Contains(scales, length => Math.Abs(length - 100) < 0.1);
                Assert.Contains(scales, length => Math.Abs(length - 101.6) < 0.1);
                Assert.Contains("Print at 100%. Measure the ruler before you use it.", page.Words, StringComparison.Ordinal);
                // 1/4 in, which home printers keep clear (common practice).
                Assert.All(
                    page.Lines,
                    line =>
                    {
                        Assert.InRange(Math.Min(line.X, line.EndX), 6.3, page.Wide);
                        Assert.InRange(Math.Max(line.X, line.EndX), 0, page.Wide - 6.3);
                        Assert.InRange(Math.Min(line.Y, line.EndY), 6.3, page.High);
                        Assert.InRange(Math.Max(line.Y, line.EndY), 0, page.High - 6.3);
                    }
                );
                Assert.All(page.Letters, letter => Assert.InRange(letter.EndX, 6.3, page.Wide - 6.3));
            }
        );
    }

    /// <summary>Oracles: a cup of 35 mm whose wood at the edge is 5 mm has its center 22.5 mm from it; the end hinges are 3 1/2 in
    /// from the ends (3 to 4 in, makers' sheets as quoted).</summary>
    [Fact]
    public void A_cup_lies_where_makers_sheets_have_it()
    {
        var template = Of("pantry-cupboard").First(one => one.Kind == TemplateKind.Cups);
        var page = Assert.Single(ReadPaper.Pages(Print([template], PaperSize.A4)));
        var body = page.Lines.Where(line => line.Y < page.High - 40).ToList();
        var across = body.Single(line => line.IsLevel && Math.Abs(line.Long - (35 + (2 * 6 * Mm))) < 0.05);
        var edges = body.Where(line => line.Long > 45 && line != across).ToList();
        var (end, edge) = (edges.Single(line => line.IsUpright), edges.Single(line => line.IsLevel));
        Assert.Equal(88.9, ((across.X + across.EndX) / 2) - end.X, 0.1);
        Assert.Equal(22.5, edge.Y - across.Y, 0.1);
    }

    /// <summary>Oracle: the 32 mm system of holes. Sheets are laid cross on cross, and then every hole is where it belongs.</summary>
    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Sheets_join_to_one_row_of_holes(PaperSize paper)
    {
        var template = Of("bookcase").First(one => one.Kind == TemplateKind.Pins);
        var pages = ReadPaper.Pages(Print([template], paper));
        Assert.True(pages.Count > 3);
        var found = new List<double>();
        var moved = 0.0;
        for (var i = 0; i < pages.Count; i++)
        {
            var registers = Centres(pages[i], Register);
            if (i > 0)
                moved += Centres(pages[i - 1], Register).Max() - registers.Min();
            found.AddRange(Centres(pages[i], PinCross).Select(x => x + moved));
            Assert.Contains($"Sheet {i + 1} of {pages.Count}: row 1, column {i + 1}", pages[i].Words, StringComparison.Ordinal);
        }

        // A hole in what two sheets share is on both.
        var holes = found
            .Order()
            .Aggregate(
                new List<double>(),
                (kept, x) =>
                {
                    if (kept.Count == 0 || x - kept[^1] > 1)
                        kept.Add(x);
                    return kept;
                }
            );
        // The end of the part is the first upright line, where the drawing begins.
        var end = pages[0].Lines.Where(line => line.IsUpright && line.Long > 40).Min(line => line.X);
        Assert.Equal(template.Holes.Length, holes.Count);
        Assert.All(
            template.Holes.OrderBy(hole => hole.At.X).Zip(holes),
            pair => Assert.Equal((double)pair.First.At.X.ToMillimetres(), pair.Second - end, 0.1)
        );
        // Within a bay; between two bays there is a shelf.
        Assert.All(
            holes.Zip(holes.Skip(1), (one, next) => next - one).Where(step => step < 60),
            step => Assert.Equal(32, step, 0.1)
        );
    }

    [Fact]
    public void Drawer_pull_holes_are_as_far_apart_as_the_pull()
    {
        var piece = BuiltInPieces.Read("nightstand");
        foreach (var pull in new[] { Length.FromMillimetres(96), Length.FromInches(3) })
        {
            var template = PartTemplates.Of(piece, pull).Single(one => one.Kind == TemplateKind.Pull);
            var page = ReadPaper.Pages(Print([template], PaperSize.Letter))[0];
            var crosses = Centres(page, (3 * 25.4 / 16) + (2 * 6 * Mm));
            Assert.Equal(2, crosses.Count);
            Assert.Equal((double)pull.ToMillimetres(), crosses[1] - crosses[0], 0.1);
        }
    }

    [Fact]
    public void A_name_of_any_kind_keeps_within_its_sheet_and_the_same_templates_give_the_same_bytes()
    {
        var template = Of("pantry-cupboard").First(one => one.Kind == TemplateKind.Cups) with
        {
            Part = new string('W', 300) + "🪚 שלום",
        };
        var file = Print([template], PaperSize.Letter, new string('Q', 300) + "\u202Etxet");
        Assert.Equal(file, Print([template], PaperSize.Letter, new string('Q', 300) + "\u202Etxet"));
        Assert.All(
            ReadPaper.Pages(file),
            page => Assert.All(page.Letters, letter => Assert.InRange(letter.EndX, 0, page.Wide - 6.3))
        );
    }

    /// <summary>Oracle: a quarter of a circle of the radius that the design asks for.</summary>
    [Fact]
    public void A_rounded_corner_keeps_its_radius()
    {
        var piece = BuiltInPieces.Of(Rounded);
        var template = Assert.Single(PartTemplates.Of(piece, Length.Zero));
        Assert.Equal("Rounded corner", template.Title);
        var page = Assert.Single(ReadPaper.Pages(Print([template], PaperSize.Letter)));
        var chords = page.Lines.Where(line => line.Long is > 0.05 and < 6 && !line.IsLevel && !line.IsUpright).ToList();
        var length = chords.Sum(line => line.Long);
        Assert.Equal(Math.PI / 2 * 50.8, length, 0.1);
    }

    private const string Rounded = """
        {
          "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Shaped",
          "dimensions": [ { "name": "width", "value": "30" }, { "name": "depth", "value": "20" }, { "name": "height", "value": "5" } ],
          "materials": [ { "role": "sheet", "name": "Plywood", "form": "sheet", "thickness": "3/4" } ],
          "frame": { "kind": "none" },
          "parts": [
            { "name": "Board", "material": "sheet", "length": "12 in", "width": "5 in", "along": "x", "flat": "y",
              "at": [ [ "0 in", "0 in", "0 in" ] ],
              "shapes": [ { "kind": "corner", "through": "y", "radius": "2 in", "first": "top", "second": "right" } ] }
          ]
        }
        """;

    private static List<PartTemplate> Of(string design) =>
        [.. PartTemplates.Of(BuiltInPieces.Read(design), PartTemplates.UsualPull)];

    private static byte[] Print(IReadOnlyList<PartTemplate> templates, PaperSize paper, string project = "Piece")
    {
        using var file = new MemoryStream();
        TemplateWriter.Write(templates, project, paper, new DateOnly(2026, 11, 28), file);
        return file.ToArray();
    }

    // Middles of the level lines of crosses, from the left.
    // Where a level and an upright line of that length cross in their middles.
    private static List<double> Centres(ReadPage page, double length)
    {
        var arms = page.Lines.Where(line => Math.Abs(line.Long - length) < 0.02 && line.Y < page.High - 40).ToList();
        return
        [
            .. arms.Where(line => line.IsLevel)
                .Select(level => (X: (level.X + level.EndX) / 2, level.Y))
                .Where(at => arms.Any(arm => arm.IsUpright && IsAt(arm.X, at.X) && IsAt((arm.Y + arm.EndY) / 2, at.Y)))
                .Select(at => at.X)
                .Order(),
        ];
    }

    private static bool IsAt(double one, double other) => Math.Abs(one - other) < 0.02;
}
