using System.Globalization;
using System.Text.Json;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>
/// A piece as a scene in space (Khronos glTF 2.0, one JSON document with its data inside): a node for each copy, named by its
/// mark, that scales and places one unit cube; a material for each role. Metres, y up, the front of the piece towards +z, as the
/// specification wants.
/// </summary>
public static class PieceGltf
{
    private const string SpecifiedVersion = "2.0";

    /// <summary>The document. Spacers and practice pieces are not in it.</summary>
    public static string Write(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var copies = piece.Parts.SelectMany(part => part.Copies.Select(copy => (Part: part, Copy: copy))).ToList();
        var roles = copies.Select(one => one.Part.Material).DistinctBy(one => one.Role).ToList();
        return JsonOutput.Object(writer =>
        {
            writer.Member("asset", inner => inner.WriteString("version", SpecifiedVersion));
            writer.WriteNumber("scene", 0);
            writer.List("scenes", [piece], (inner, one) => Scene(inner, one, copies.Count));
            if (copies.Count == 0)
                return;
            writer.List(
                "nodes",
                copies,
                (inner, one) => Node(inner, one.Part, one.Copy, roles.FindIndex(role => role.Role == one.Part.Material.Role))
            );
            writer.List("meshes", roles.Select((_, i) => i), Mesh);
            writer.List("materials", roles, Material);
            UnitCube.Write(writer);
        });
    }

    private static void Scene(Utf8JsonWriter writer, Piece piece, int nodes)
    {
        writer.WriteString("name", piece.Name);
        if (nodes == 0)
            return;
        writer.WriteStartArray("nodes");
        for (var i = 0; i < nodes; i++)
            writer.WriteNumberValue(i);
        writer.WriteEndArray();
    }

    // Ours to theirs: x stays, up is y, and what lies further back has the smaller z.
    private static void Node(Utf8JsonWriter writer, PiecePart part, PartCopy copy, int mesh)
    {
        var box = copy.Box;
        writer.WriteString("name", copy.Mark);
        writer.WriteNumber("mesh", mesh);
        writer.Numbers("translation", Metres(box.X), Metres(box.Z), -Metres(box.EndY));
        writer.Numbers("scale", Metres(box.Dx), Metres(box.Dz), Metres(box.Dy));
        writer.Member(
            "extras",
            inner =>
            {
                inner.WriteString("part", part.Id);
                inner.WriteString("name", part.Name);
            }
        );
    }

    private static decimal Metres(Length length) => length.ToMillimetres() / 1000;

    // The cube is one for all; a mesh carries its material, so there is one for each role.
    private static void Mesh(Utf8JsonWriter writer, int role) =>
        writer.List(
            "primitives",
            [role],
            (inner, material) =>
            {
                inner.Member(
                    "attributes",
                    attributes =>
                    {
                        attributes.WriteNumber("POSITION", UnitCube.Positions);
                        attributes.WriteNumber("NORMAL", UnitCube.Normals);
                    }
                );
                inner.WriteNumber("indices", UnitCube.Indices);
                inner.WriteNumber("material", material);
            }
        );

    private static void Material(Utf8JsonWriter writer, RoleMaterial material)
    {
        writer.WriteString("name", material.Role);
        writer.Member(
            "pbrMetallicRoughness",
            inner =>
            {
                var tint = RoleTint.Of(material);
                inner.Numbers("baseColorFactor", Linear(tint, 1), Linear(tint, 3), Linear(tint, 5), 1);
                inner.WriteNumber("metallicFactor", 0);
                inner.WriteNumber("roughnessFactor", 0.8m);
            }
        );
    }

    // The specification wants linear light; a tint is written in sRGB (IEC 61966-2-1).
    private static decimal Linear(string tint, int at)
    {
        var c = int.Parse(tint.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return Math.Round((decimal)(c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)), 6);
    }
}
