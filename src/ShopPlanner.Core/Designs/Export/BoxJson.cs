using System.Text.Json;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>Boxes as JSON.</summary>
internal static class BoxJson
{
    /// <summary>Corner and extents: <c>x</c>, <c>y</c>, <c>z</c>, <c>dx</c>, <c>dy</c>, <c>dz</c>.</summary>
    public static void Box(this Utf8JsonWriter writer, Box box, LengthUnit unit)
    {
        writer.Length("x", box.X, unit);
        writer.Length("y", box.Y, unit);
        writer.Length("z", box.Z, unit);
        writer.Extents(box, unit);
    }

    /// <summary>Extents alone.</summary>
    public static void Extents(this Utf8JsonWriter writer, Box box, LengthUnit unit)
    {
        writer.Length("dx", box.Dx, unit);
        writer.Length("dy", box.Dy, unit);
        writer.Length("dz", box.Dz, unit);
    }
}
