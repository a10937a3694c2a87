using QRCoder;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Labels;

/// <summary>A QR code (ISO/IEC 18004): modules that are dark or light.</summary>
internal sealed class QrCode
{
    // The standard asks for four light modules around a code.
    private const int Quiet = 4;
    private const string Black = "#000000";

    private readonly bool[,] dark;

    private QrCode(bool[,] dark) => this.dark = dark;

    /// <summary>How many modules a side has, with the light ones around it.</summary>
    public int Side => Modules + (2 * Quiet);

    private int Modules => dark.GetLength(0);

    /// <summary>The code of a text, which can be read with up to 15% of it gone (level M); null for a text that is too long for a
    /// label.</summary>
    public static QrCode? Of(string text)
    {
        if (text.Length is 0 or > 500)
            return null;
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return new(Taken(code));
    }

    /// <summary>The code in a square.</summary>
    public IEnumerable<Shape> Draw(Box square)
    {
        var module = square.Width / Side;
        var free = (bool[,])dark.Clone();
        for (var y = 0; y < Modules; y++)
        for (var x = 0; x < Modules; x++)
            if (free[y, x])
                yield return Patch(Take(free, x, y), square, module);
    }

    private static Patch Patch((int X, int Y, int Wide, int High) area, Box square, double module) =>
        new(
            Fill.Wood,
            new(
                square.X + ((area.X + Quiet) * module),
                square.Y + ((area.Y + Quiet) * module),
                area.Wide * module,
                area.High * module
            ),
            Black
        );

    // The widest run of dark modules, and as many rows of it as follow: a few rectangles print faster than all the modules.
    private static (int X, int Y, int Wide, int High) Take(bool[,] free, int x, int y)
    {
        var (size, wide, high) = (free.GetLength(0), 1, 1);
        while (x + wide < size && free[y, x + wide])
            wide++;
        while (y + high < size && Enumerable.Range(x, wide).All(at => free[y + high, at]))
            high++;
        for (var row = y; row < y + high; row++)
        for (var at = x; at < x + wide; at++)
            free[row, at] = false;
        return (x, y, wide, high);
    }

    private static bool[,] Taken(QRCodeData code)
    {
        var size = code.ModuleMatrix.Count - (2 * Quiet);
        var dark = new bool[size, size];
        for (var y = 0; y < size; y++)
        for (var x = 0; x < size; x++)
            dark[y, x] = code.ModuleMatrix[y + Quiet][x + Quiet];
        return dark;
    }
}
