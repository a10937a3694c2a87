using System.Globalization;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Templates;

/// <summary>A ruler of 100 mm and 4 in, to see whether the printer kept the size.</summary>
internal static class CheckRuler
{
    private const double Figure = 6;

    /// <summary>The ruler.</summary>
    /// <param name="x">Of its zero.</param>
    /// <param name="y">Between its two scales.</param>
    public static IEnumerable<Shape> Draw(double x, double y)
    {
        yield return new Line(Stroke.Outline, new(x, y - 1), new(x + (100 * Tiling.Mm), y - 1));
        yield return new Line(Stroke.Outline, new(x, y + 1), new(x + (4 * 72), y + 1));
        for (var mm = 0; mm <= 100; mm++)
        {
            var at = x + (mm * Tiling.Mm);
            yield return new Line(
                Stroke.Thin,
                new(at, y - 1),
                new(
                    at,
                    y
                        - 1
                        - (
                            mm % 10 == 0 ? 7
                            : mm % 5 == 0 ? 5
                            : 3
                        )
                )
            );
            if (mm % 20 == 0)
                yield return Text(at, y - 12, mm.ToString(CultureInfo.InvariantCulture) + (mm == 100 ? " mm" : ""), mm == 100);
        }

        for (var eighth = 0; eighth <= 32; eighth++)
        {
            var at = x + (eighth * 9);
            yield return new Line(
                Stroke.Thin,
                new(at, y + 1),
                new(
                    at,
                    y
                        + 1
                        + (
                            eighth % 8 == 0 ? 7
                            : eighth % 4 == 0 ? 5
                            : 3
                        )
                )
            );
            if (eighth % 8 == 0)
                yield return Text(
                    at,
                    y + 12,
                    (eighth / 8).ToString(CultureInfo.InvariantCulture) + (eighth == 32 ? " in" : ""),
                    eighth == 32
                );
        }
    }

    private static Caption Text(double x, double y, string words, bool isLast) =>
        new(new(isLast ? x - 3 : x, y), words, Figure, isLast ? Anchor.Start : Anchor.Middle);
}
