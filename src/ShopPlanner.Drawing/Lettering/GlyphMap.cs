using System.Buffers.Binary;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>Which glyph a character has: the table cmap of the OpenType specification, formats 4 and 12.</summary>
internal sealed class GlyphMap
{
    private readonly Dictionary<int, int> glyphs;

    private GlyphMap(Dictionary<int, int> glyphs) => this.glyphs = glyphs;

    /// <summary>The glyph's number; 0 where the font has none.</summary>
    public int Find(int character) => glyphs.GetValueOrDefault(character);

    /// <summary>Reads the fullest Unicode subtable.</summary>
    public static GlyphMap Read(byte[] font, int table)
    {
        var data = font.AsMemory(table);
        var glyphs = new Dictionary<int, int>();
        for (var i = 0; i < UInt16(data, 2); i++)
        {
            var subtable = data[(int)UInt32(data, 4 + (8 * i) + 4)..];
            if (UInt16(subtable, 0) == 4)
                ReadSegments(subtable, glyphs);
            else if (UInt16(subtable, 0) == 12)
                ReadGroups(subtable, glyphs);
        }

        return new(glyphs);
    }

    private static void ReadGroups(ReadOnlyMemory<byte> data, Dictionary<int, int> glyphs)
    {
        for (var i = 0; i < UInt32(data, 12); i++)
        {
            var (first, last, glyph) = (UInt32(data, 16 + (12 * i)), UInt32(data, 20 + (12 * i)), UInt32(data, 24 + (12 * i)));
            for (var c = first; c <= last; c++)
                glyphs[(int)c] = (int)(glyph + c - first);
        }
    }

    private static void ReadSegments(ReadOnlyMemory<byte> data, Dictionary<int, int> glyphs)
    {
        var doubled = UInt16(data, 6);
        for (var at = 14; at < 14 + doubled; at += 2)
        {
            var (last, first) = (UInt16(data, at), UInt16(data, at + 2 + doubled));
            for (var c = first; c <= last && c < 0xFFFF; c++)
                if (Segment(data, at + 2 + doubled, doubled, c - first, c) is var glyph and not 0)
                    glyphs.TryAdd(c, glyph);
        }
    }

    // The specification's own arithmetic: the range offset counts from where it stands.
    private static int Segment(ReadOnlyMemory<byte> data, int startAt, int doubled, int within, int c)
    {
        var delta = UInt16(data, startAt + doubled);
        var rangeAt = startAt + (2 * doubled);
        var range = UInt16(data, rangeAt);
        if (range == 0)
            return (c + delta) & 0xFFFF;
        var glyph = UInt16(data, rangeAt + range + (2 * within));
        return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
    }

    private static int UInt16(ReadOnlyMemory<byte> data, int offset) => BinaryPrimitives.ReadUInt16BigEndian(data.Span[offset..]);

    private static uint UInt32(ReadOnlyMemory<byte> data, int offset) =>
        BinaryPrimitives.ReadUInt32BigEndian(data.Span[offset..]);
}
