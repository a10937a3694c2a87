using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Model;

/// <summary>A side of a box in a piece.</summary>
public enum BoxSide
{
    /// <summary>Where x begins.</summary>
    Left,

    /// <summary>Where x ends.</summary>
    Right,

    /// <summary>Where y begins.</summary>
    Front,

    /// <summary>Where y ends.</summary>
    Back,

    /// <summary>Where z begins.</summary>
    Bottom,

    /// <summary>Where z ends.</summary>
    Top,
}

/// <summary>What the sides of a box are to each other.</summary>
public static class BoxSides
{
    /// <summary>The direction that a side looks in.</summary>
    public static Axis Axis(this BoxSide side) =>
        side switch
        {
            BoxSide.Left or BoxSide.Right => Model.Axis.X,
            BoxSide.Front or BoxSide.Back => Model.Axis.Y,
            _ => Model.Axis.Z,
        };

    /// <summary>Whether a box ends there along its axis; else it begins there.</summary>
    public static bool IsFar(this BoxSide side) => side is BoxSide.Right or BoxSide.Back or BoxSide.Top;

    /// <summary>The side at the start or the end of an axis.</summary>
    public static BoxSide Of(Axis axis, bool isFar) =>
        axis switch
        {
            Model.Axis.X => isFar ? BoxSide.Right : BoxSide.Left,
            Model.Axis.Y => isFar ? BoxSide.Back : BoxSide.Front,
            _ => isFar ? BoxSide.Top : BoxSide.Bottom,
        };

    /// <summary>The side across the box.</summary>
    public static BoxSide Opposite(this BoxSide side) => Of(side.Axis(), !side.IsFar());

    /// <summary>The axis that two others leave.</summary>
    public static Axis Third(Axis one, Axis other) => (Axis)(3 - (int)one - (int)other);

    /// <summary>The two other axes, in the order x, y, z.</summary>
    public static (Axis First, Axis Second) Others(Axis axis) =>
        axis switch
        {
            Model.Axis.X => (Model.Axis.Y, Model.Axis.Z),
            Model.Axis.Y => (Model.Axis.X, Model.Axis.Z),
            _ => (Model.Axis.X, Model.Axis.Y),
        };

    /// <summary>The slice of a box that reaches from a side so far inward.</summary>
    public static Box Slice(this Box box, BoxSide side, Length deep)
    {
        var axis = side.Axis();
        return side.IsFar()
            ? box.With(axis, box.End(axis) - deep, box.End(axis))
            : box.With(axis, box.Start(axis), box.Start(axis) + deep);
    }

    /// <summary>The slice of a box between two distances from where it begins along an axis.</summary>
    public static Box Slice(this Box box, Axis axis, Length from, Length to) =>
        box.With(axis, box.Start(axis) + from, box.Start(axis) + to);
}
