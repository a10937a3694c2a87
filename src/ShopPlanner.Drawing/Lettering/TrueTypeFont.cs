using System.Buffers.Binary;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>
/// What is needed of a TrueType font to measure text: which characters it has and how far each advances (tables head, hhea,
/// hmtx, cmap and OS/2 of the OpenType specification). Kerning is not applied, on paper as here.
/// </summary>
public sealed class TrueTypeFont
{
    private readonly byte[] data;
    private readonly Dictionary<string, int> tables;
    private readonly GlyphMap glyphs;
    private readonly int longMetrics;
    private readonly double perEm;

    /// <summary>Reads a font.</summary>
    /// <param name="data">The file's bytes, kept.</param>
    public TrueTypeFont(byte[] data)
    {
        this.data = data;
        tables = Tables();
        glyphs = GlyphMap.Read(data, tables["cmap"]);
        perEm = UInt16(tables["head"] + 18);
        longMetrics = UInt16(tables["hhea"] + 34);
        CapHeight = Int16(tables["OS/2"] + 88) / perEm;
    }

    /// <summary>Height of a capital or a figure above the base line, in ems.</summary>
    public double CapHeight { get; }

    /// <summary>Whether the outlines are TrueType's (table glyf).</summary>
    public bool HasTrueTypeOutlines => tables.ContainsKey("glyf");

    /// <summary>The file's bytes.</summary>
    public ReadOnlyMemory<byte> Bytes => data;

    /// <summary>Whether the font draws the character.</summary>
    public bool Has(Rune character) => glyphs.Find(character.Value) != 0;

    /// <summary>How far a character advances, in ems; a missing one as far as the font's box for missing glyphs.</summary>
    public double Advance(Rune character)
    {
        var glyph = Math.Min(glyphs.Find(character.Value), longMetrics - 1);
        return UInt16(tables["hmtx"] + (4 * glyph)) / perEm;
    }

    /// <summary>How wide a text runs.</summary>
    /// <param name="text">One line.</param>
    /// <param name="size">Of the type; the result is in the same unit.</param>
    public double Width(string text, double size)
    {
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes())
            ems += Advance(rune);
        return ems * size;
    }

    private Dictionary<string, int> Tables()
    {
        var found = new Dictionary<string, int>();
        for (var i = 0; i < UInt16(4); i++)
        {
            var entry = data.AsSpan(12 + (16 * i), 16);
            found[Encoding.ASCII.GetString(entry[..4])] = (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
        }

        return found;
    }

    private int UInt16(int offset) => BinaryPrimitives.ReadUInt16BigEndian(data.AsSpan(offset));

    private int Int16(int offset) => BinaryPrimitives.ReadInt16BigEndian(data.AsSpan(offset));
}
