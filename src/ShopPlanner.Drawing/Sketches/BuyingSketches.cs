using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using static ShopPlanner.Drawing.Sketches.CanvasWords;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>What is bought, and a rule to read.</summary>
internal static class BuyingSketches
{
    /// <summary>A part on a sheet, or a board.</summary>
    public static void Price(SketchInputs inputs, Canvas canvas)
    {
        var (wide, long_) = (inputs.Length("23 in", "width"), inputs.Length("30 in", "length"));
        var isSheet = inputs.Word("board-foot", "per") == "sheet";
        var (sheetWide, sheetLong) = isSheet
            ? (inputs.Length("48 in", "sheet-width"), inputs.Length("96 in", "sheet-length"))
            : (wide, long_);
        var room = Canvas.Area with { X = 100, Width = 320 };
        var (sheet, scale) = canvas.Fit(
            Math.Max(Inches(sheetLong), Inches(long_)),
            Math.Max(Inches(sheetWide), Inches(wide)),
            room
        );
        if (isSheet)
            canvas.Add(new Frame(Stroke.Hidden, sheet));
        var part = isSheet
            ? sheet with
            {
                Width = Math.Min(sheet.Width, Math.Max(8, Inches(long_) * scale)),
                Height = Math.Min(sheet.Height, Math.Max(8, Inches(wide) * scale)),
            }
            : sheet;
        canvas.Face(part);
        canvas.Across(part.X, part.Right, sheet.Bottom + Canvas.Away, part.Bottom, inputs.Shown(long_));
        canvas.High(part.Bottom, part.Y, sheet.X - Canvas.Away, part.X, inputs.Shown(wide));
        canvas.Tell(part.Centre.X, part.Centre.Y, inputs.Main);
        canvas.Note(isSheet ? "Dashed: the whole sheet." : "The part as it is counted.");
    }

    /// <summary>A panel with its banded edges.</summary>
    public static void Band(SketchInputs inputs, Canvas canvas)
    {
        var (a, b) = (inputs.Length("30 in", "length"), inputs.Length("12 in", "width"));
        var (long_, wide) = (Length.Max(a, b), Length.Min(a, b));
        var (panel, _) = canvas.Fit(Inches(long_), Inches(wide), Canvas.Area with { X = 100, Width = 320 });
        canvas.Face(panel);
        const double band = 5;
        var (longs, shorts) = (inputs.Count(1, 2, "long"), inputs.Count(0, 2, "short"));
        if (longs > 0)
            canvas.End(new(panel.X, panel.Y - band, panel.Width, band));
        if (longs > 1)
            canvas.End(new(panel.X, panel.Bottom, panel.Width, band));
        if (shorts > 0)
            canvas.End(new(panel.X - band, panel.Y, band, panel.Height));
        if (shorts > 1)
            canvas.End(new(panel.Right, panel.Y, band, panel.Height));
        canvas.Across(panel.X, panel.Right, panel.Bottom + 24, panel.Bottom + band, inputs.Shown(long_));
        canvas.High(panel.Bottom, panel.Y, panel.X - 20, panel.X - band, inputs.Shown(wide));
        canvas.Tell(panel.Centre.X, panel.Centre.Y, inputs.Main);
        canvas.Note("Hatched: the banded edges.");
    }

    /// <summary>An inch of a rule, magnified, with the size on it.</summary>
    public static void Convert(SketchInputs inputs, Canvas canvas)
    {
        var size = inputs.Length("23/32 in", "value");
        var per = Math.Clamp(inputs.Count(64, 64, "to"), 8, 64);
        var area = Canvas.Area;
        var (top, bottom) = (area.Y + 60, area.Y + 150);
        canvas.Plain(new(area.X, top, area.Width, bottom - top));
        for (var i = 0; i <= per; i++)
        {
            var x = area.X + (area.Width * i / per);
            var high = Enumerable.Range(0, 7).First(n => i * (1 << n) % per == 0 || n == 6) switch
            {
                0 => 80,
                1 => 60,
                2 => 46,
                3 => 34,
                4 => 25,
                5 => 17,
                _ => 11,
            };
            canvas.Line(high > 40 ? Stroke.Outline : Stroke.Thin, x, top, x, top + high);
        }

        var whole = size.Ticks / Length.TicksPerInch;
        var part = (double)(size.Ticks % Length.TicksPerInch) / Length.TicksPerInch;
        canvas.Arrow(area.X + (area.Width * part), top - 34, top - 3, "");
        canvas.Tell(area.X + (area.Width * part), top - 46, inputs.Shown(size));
        canvas.Say(area.X, bottom + 14, $"{whole}″");
        canvas.Say(area.Right, bottom + 14, $"{whole + 1}″");
        canvas.Note($"One inch of a rule that reads to 1/{per} in.");
    }
}
