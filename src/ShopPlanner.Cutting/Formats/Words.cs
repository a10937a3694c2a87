using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>The words of both formats and what they stand for.</summary>
internal static class Words
{
    /// <summary>The version of every document that needs no later one.</summary>
    public const int Version = 1;

    /// <summary>The version of a request whose stock has bad places, or names the edges to trim: a program that passes over
    /// what
    /// it does not know would cut parts from bad wood.</summary>
    public const int PlacesVersion = 2;

    public const string Request = "shop-planner/cut-request";
    public const string Plan = "shop-planner/cut-plan";

    public static readonly Dictionary<string, StockForm> Forms = new()
    {
        ["board"] = StockForm.Board,
        ["sheet"] = StockForm.Sheet,
    };

    public static readonly Dictionary<string, StockEdges> Edges = new()
    {
        ["near"] = StockEdges.Near,
        ["far"] = StockEdges.Far,
        ["front"] = StockEdges.Front,
        ["back"] = StockEdges.Back,
    };

    public static readonly Dictionary<string, Grain> Grains = new() { ["length"] = Grain.Length, ["any"] = Grain.Any };

    public static readonly Dictionary<string, CutKind> Kinds = new() { ["crosscut"] = CutKind.Crosscut, ["rip"] = CutKind.Rip };

    public static readonly Dictionary<string, PlanStatus> Statuses = new()
    {
        ["proven"] = PlanStatus.Proven,
        ["best-found"] = PlanStatus.BestFound,
        ["incomplete"] = PlanStatus.Incomplete,
    };

    /// <summary>Who makes a cut; nothing is written for a cut at home.</summary>
    public static readonly Dictionary<string, bool> Makers = new() { ["store"] = true };

    /// <summary>The members that every document begins with.</summary>
    public static void Header(this Utf8JsonWriter writer, string format, LengthUnit unit, int version = Version)
    {
        writer.WriteString("format", format);
        writer.WriteNumber("version", version);
        writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, unit));
    }

    /// <summary>The document's version when it is of the format and of a version read here; null if not: then nothing more of
    /// it
    /// can be judged.</summary>
    public static int? VersionOf(DocumentObject root, string format) =>
        DocumentHeader.VersionOf(root, format, format == Request ? PlacesVersion : Version);

    /// <summary>The document's unit; inches when that is a fault, so that the other members can be judged too.</summary>
    public static LengthUnit ReadUnit(DocumentObject root) =>
        root["unit"].Required("write \"in\" or \"mm\"").OneOf(DocumentWords.Units) ?? LengthUnit.Inch;
}
