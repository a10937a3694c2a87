using System.Numerics;
using System.Text;
using System.Text.Json;
using SharpGLTF.Schema2;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs.Export;

/// <summary>Scenes against the specification (Khronos glTF 2.0) and a library that reads them.</summary>
public sealed class SceneTests
{
    private const int ShortSize = 2,
        FloatSize = 4;

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Its_structure_is_as_specified(string name)
    {
        var piece = Piece(name);
        using var document = JsonDocument.Parse(PieceGltf.Write(piece));
        var root = document.RootElement;
        Assert.Equal("2.0", root.GetProperty("asset").GetProperty("version").GetString());
        var nodes = root.GetProperty("nodes").EnumerateArray().ToList();
        Assert.Equal(
            piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark),
            nodes.Select(node => node.GetProperty("name").GetString())
        );
        Assert.Distinct(nodes.Select(node => node.GetProperty("name").GetString()));
        Assert.Equal(
            Enumerable.Range(0, nodes.Count),
            root.GetProperty("scenes")[0].GetProperty("nodes").EnumerateArray().Select(node => node.GetInt32())
        );
        var (meshes, materials) = (root.GetProperty("meshes"), root.GetProperty("materials"));
        Assert.All(nodes, node => Assert.InRange(node.GetProperty("mesh").GetInt32(), 0, meshes.GetArrayLength() - 1));
        foreach (var primitive in meshes.EnumerateArray().Select(mesh => mesh.GetProperty("primitives")[0]))
        {
            Assert.InRange(primitive.GetProperty("material").GetInt32(), 0, materials.GetArrayLength() - 1);
            Assert.Equal(
                (0, 1, 2),
                (
                    primitive.GetProperty("attributes").GetProperty("POSITION").GetInt32(),
                    primitive.GetProperty("attributes").GetProperty("NORMAL").GetInt32(),
                    primitive.GetProperty("indices").GetInt32()
                )
            );
        }

        Assert.All(
            materials.EnumerateArray(),
            material =>
                Assert.All(
                    material.GetProperty("pbrMetallicRoughness").GetProperty("baseColorFactor").EnumerateArray(),
                    part => Assert.InRange(part.GetDouble(), 0.0, 1.0)
                )
        );
    }

    [Fact]
    public void Accessors_lie_in_their_views_and_indices_in_range()
    {
        using var document = JsonDocument.Parse(PieceGltf.Write(Piece("table")));
        var root = document.RootElement;
        var buffer = root.GetProperty("buffers")[0];
        var data = Convert.FromBase64String(buffer.GetProperty("uri").GetString()!.Split("base64,")[1]);
        Assert.Equal(data.Length, buffer.GetProperty("byteLength").GetInt32());
        var accessors = root.GetProperty("accessors").EnumerateArray().ToList();
        var views = accessors
            .Select(accessor => root.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()])
            .ToList();
        foreach (var (accessor, view) in accessors.Zip(views))
        {
            var element = accessor.GetProperty("type").GetString() == "VEC3" ? 3 * FloatSize : ShortSize;
            Assert.Equal(accessor.GetProperty("count").GetInt32() * element, view.GetProperty("byteLength").GetInt32());
            Assert.True(
                view.GetProperty("byteOffset").GetInt32() % FloatSize == 0,
                "an accessor starts at a multiple of its component's size"
            );
        }

        Assert.Equal(data.Length, views.Sum(view => view.GetProperty("byteLength").GetInt32()));
        var positions = Enumerable.Range(0, 24).Select(i => Vector(data, i * 12)).ToList();
        Assert.Equal(
            (Least(accessors[0], "min"), Least(accessors[0], "max")),
            (positions.Aggregate(Vector3.Min), positions.Aggregate(Vector3.Max))
        );
        var indices = Enumerable.Range(0, 36).Select(i => BitConverter.ToUInt16(data, (24 * 24) + (i * 2))).ToList();
        Assert.All(indices, index => Assert.InRange(index, 0, 23));
        Outward(data, positions, indices);
    }

    [Theory, MemberData(nameof(Names))]
    public void A_library_reads_every_copy_where_it_is(string name)
    {
        var piece = Piece(name);
        var text = Encoding.UTF8.GetBytes(PieceGltf.Write(piece));
        var model = ReadContext
            .CreateFromDictionary(new Dictionary<string, ArraySegment<byte>> { ["piece.gltf"] = text })
            .ReadSchema2("piece.gltf");
        foreach (var copy in piece.Parts.SelectMany(part => part.Copies))
        {
            var node = Assert.Single(model.LogicalNodes, one => one.Name == copy.Mark);
            var corners = node
                .Mesh.Primitives[0]
                .GetVertexAccessor("POSITION")
                .AsVector3Array()
                .Select(corner => Vector3.Transform(corner, node.WorldMatrix))
                .ToList();
            Near(new(Metres(copy.Box.X), Metres(copy.Box.Z), -Metres(copy.Box.EndY)), corners.Aggregate(Vector3.Min));
            Near(new(Metres(copy.Box.EndX), Metres(copy.Box.EndZ), -Metres(copy.Box.Y)), corners.Aggregate(Vector3.Max));
        }
    }

    // Two triangles a face, counter-clockwise from outside: their normal is the one that is written.
    private static void Outward(byte[] data, List<Vector3> positions, List<ushort> indices)
    {
        foreach (var triangle in indices.Chunk(3))
        {
            var (a, b, c) = (positions[triangle[0]], positions[triangle[1]], positions[triangle[2]]);
            var normal = Vector3.Normalize(Vector3.Cross(b - a, c - a));
            Assert.All(triangle, corner => Assert.Equal(normal, Vector(data, (24 * 12) + (corner * 12))));
            Assert.True(Vector3.Dot(normal, ((a + b + c) / 3) - new Vector3(0.5f)) > 0, "a face looks inward");
        }
    }

    private static Vector3 Vector(byte[] data, int at) =>
        new(BitConverter.ToSingle(data, at), BitConverter.ToSingle(data, at + 4), BitConverter.ToSingle(data, at + 8));

    private static Vector3 Least(JsonElement accessor, string name)
    {
        var numbers = accessor.GetProperty(name).EnumerateArray().Select(one => one.GetSingle()).ToArray();
        return new(numbers[0], numbers[1], numbers[2]);
    }

    private static void Near(Vector3 expected, Vector3 actual) =>
        Assert.True(Vector3.Distance(expected, actual) < 1e-5f, $"{expected} and {actual}");

    private static float Metres(Length length) => (float)(length.ToMillimetres() / 1000);

    private static Piece Piece(string name) => Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
}
