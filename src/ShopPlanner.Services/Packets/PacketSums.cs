using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Packets;

/// <summary>What each project of a plan takes in wood and money.</summary>
internal static class PacketSums
{
    /// <summary>In the order of the plan's projects.</summary>
    public static ImmutableArray<PacketTakes> Of(PlanView plan)
    {
        var projects = plan.Order.Projects.Where(id => plan.Parts.Values.Any(part => part.ProjectId == id)).Distinct().ToList();
        return
        [
            .. CostShares
                .Of(plan.Request, plan.Plan, projects, part => plan.Parts[part].ProjectId)
                .Select(share => new PacketTakes(NameOf(plan, share.Owner), "", Wood(plan, share.Owner), share.Cost, 0, 0)),
        ];
    }

    private static string NameOf(PlanView plan, Guid project) =>
        plan.Parts.Values.First(part => part.ProjectId == project).Project;

    private static string Wood(PlanView plan, Guid project)
    {
        var own = plan.Request.Parts.Where(part => plan.Parts[part.Id].ProjectId == project).ToList();
        var forms = plan.Request.Materials.ToDictionary(material => material.Id, material => material.Form);
        return Wood(own, part => forms[part.Material] == StockForm.Board, plan.Request.Unit);
    }

    /// <summary>Parts in words: <c>31 pieces: 28 sq ft of sheets, 46 ft of boards</c>.</summary>
    /// <param name="parts">As they are cut.</param>
    /// <param name="isBoard">Whether one is cut from a board.</param>
    /// <param name="unit">Of the figures.</param>
    public static string Wood(IReadOnlyList<CutPart> parts, Func<CutPart, bool> isBoard, LengthUnit unit)
    {
        var sheets = parts
            .Where(part => !isBoard(part))
            .Aggregate(Area.Zero, (sum, part) => sum + (Area.Of(part.Length, part.Width) * part.Quantity));
        var boards = parts.Where(isBoard).Aggregate(Length.Zero, (sum, part) => sum + (part.Length * part.Quantity));
        string[] words =
        [
            sheets > Area.Zero ? $"{AreaFormat.Of(sheets, unit)} of sheets" : "",
            boards.IsPositive ? $"{Run(boards, unit)} of boards" : "",
        ];
        var pieces = parts.Sum(part => part.Quantity).ToString(CultureInfo.InvariantCulture);
        return $"{pieces} pieces to cut: {string.Join(", ", words.Where(one => one.Length > 0))}";
    }

    private static string Run(Length length, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? Math.Ceiling(length.ToInches() / 12).ToString("0", CultureInfo.InvariantCulture) + " ft"
            : (Math.Ceiling(length.ToMillimetres() / 100) / 10).ToString("0.0", CultureInfo.InvariantCulture) + " m";
}
