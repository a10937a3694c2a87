using ShopPlanner.Packets.Labels;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Paper;

/// <summary>What labels are for: the parts of a plan, those of a project, or, where neither is named, the offcuts in the
/// bin.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Project">The project.</param>
public sealed record LabelSource(Guid? Plan, Guid? Project)
{
    /// <summary>The offcuts in the bin.</summary>
    public static LabelSource Bin { get; } = new(null, null);
}

/// <summary>What can be labeled.</summary>
/// <param name="Title">Name of the plan or project; empty for the bin.</param>
/// <param name="Count">How many labels there are.</param>
/// <param name="OutOfDate">Whether it is a plan that is out of date.</param>
public sealed record LabelsView(string Title, int Count, bool OutOfDate);

/// <summary>A file to print.</summary>
/// <param name="Name">What it is of.</param>
/// <param name="Content">A PDF.</param>
public sealed record PaperFile(string Name, byte[] Content);

/// <summary>Prints labels, one for every physical part or offcut.</summary>
public interface ILabelService
{
    /// <summary>What can be labeled; null where there is no such plan or project, or the plan is canceled.</summary>
    Task<LabelsView?> FindAsync(LabelSource source, CancellationToken cancel = default);

    /// <summary>Prints them. Faulty where none of them has one of the marks that are asked for: field <c>only</c>.</summary>
    /// <param name="source">Of what.</param>
    /// <param name="only">Marks, letters or tags, with commas or blanks between; empty for all.</param>
    /// <param name="print">On which sheet, from which label on.</param>
    /// <param name="address">The address that a part's code leads to, by project and mark; null for no codes.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<PaperFile>> PrintAsync(
        LabelSource source,
        string? only,
        LabelPrint print,
        Func<Guid, string, string>? address,
        CancellationToken cancel = default
    );
}
