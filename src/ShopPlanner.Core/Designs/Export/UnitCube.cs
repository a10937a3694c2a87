using System.Buffers.Binary;
using System.Text.Json;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The cube from 0 to 1 in all three directions as glTF data: four corners a face, so that each face has its own normal,
/// and two triangles a face, wound counter-clockwise as seen from outside.</summary>
internal static class UnitCube
{
    /// <summary>Numbers of its accessors.</summary>
    public const int Positions = 0,
        Normals = 1,
        Indices = 2;

    private const int Corners = 24,
        Triangles = 12;
    private const int VectorBytes = Corners * 3 * sizeof(float),
        IndexBytes = Triangles * 3 * sizeof(ushort);

    // As the specification numbers them.
    private const int Float = 5126,
        UnsignedShort = 5123,
        ArrayBuffer = 34962,
        ElementArrayBuffer = 34963;

    private static readonly int[] Round = [0, 1, 2, 0, 2, 3];

    /// <summary>Accessors, views and the buffer with the data in base64.</summary>
    public static void Write(Utf8JsonWriter writer)
    {
        writer.List("accessors", [Positions, Normals, Indices], Accessor);
        writer.List("bufferViews", [Positions, Normals, Indices], View);
        writer.List(
            "buffers",
            [Data()],
            (inner, data) =>
            {
                inner.WriteNumber("byteLength", data.Length);
                inner.WriteString("uri", "data:application/octet-stream;base64," + Convert.ToBase64String(data));
            }
        );
    }

    private static void Accessor(Utf8JsonWriter writer, int which)
    {
        writer.WriteNumber("bufferView", which);
        writer.WriteNumber("componentType", which == Indices ? UnsignedShort : Float);
        writer.WriteNumber("count", which == Indices ? Triangles * 3 : Corners);
        writer.WriteString("type", which == Indices ? "SCALAR" : "VEC3");
        if (which != Positions)
            return;
        writer.Numbers("min", 0, 0, 0);
        writer.Numbers("max", 1, 1, 1);
    }

    private static void View(Utf8JsonWriter writer, int which)
    {
        writer.WriteNumber("buffer", 0);
        writer.WriteNumber("byteOffset", which * VectorBytes);
        writer.WriteNumber("byteLength", which == Indices ? IndexBytes : VectorBytes);
        writer.WriteNumber("target", which == Indices ? ElementArrayBuffer : ArrayBuffer);
    }

    private static byte[] Data()
    {
        var data = new byte[(VectorBytes * 2) + IndexBytes];
        for (var face = 0; face < 6; face++)
        {
            for (var corner = 0; corner < 4; corner++)
                Corner(data, face, corner);
            for (var i = 0; i < Round.Length; i++)
                Index(data.AsSpan(VectorBytes * 2), (face * Round.Length) + i, (face * 4) + Round[i]);
        }

        return data;
    }

    private static void Index(Span<byte> indices, int at, int corner) =>
        BinaryPrimitives.WriteUInt16LittleEndian(indices[(at * sizeof(ushort))..], (ushort)corner);

    // Face 0 looks along −x, 1 along +x, 2 and 3 along y, 4 and 5 along z.
    private static void Corner(byte[] data, int face, int corner)
    {
        var (axis, far) = (face / 2, face % 2);
        var (u, v) = (corner is 1 or 2 ? 1 : 0, corner is 2 or 3 ? 1 : 0);
        for (var i = 0; i < 3; i++)
        {
            var at = (((face * 4) + corner) * 3) + i;
            var along =
                i == axis ? far
                : i == (axis + 1) % 3 ? (far == 1 ? u : v)
                : (far == 1 ? v : u);
            var normal = i == axis ? (far * 2) - 1 : 0;
            BinaryPrimitives.WriteSingleLittleEndian(data.AsSpan(at * sizeof(float)), along);
            BinaryPrimitives.WriteSingleLittleEndian(data.AsSpan(VectorBytes + (at * sizeof(float))), normal);
        }
    }
}
