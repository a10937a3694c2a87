using System.Collections.Immutable;
using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Paper;

/// <summary>A template of a project in a list.</summary>
/// <param name="Template">The template.</param>
/// <param name="Sheets">How many sheets it takes on the paper that was asked for.</param>
public sealed record TemplateLine(PartTemplate Template, int Sheets);

/// <summary>The templates of a project.</summary>
/// <param name="Project">Its name.</param>
/// <param name="Unit">Of its lengths.</param>
/// <param name="Lines">In the order of the parts; none where no part is drilled or shaped, or there is no design.</param>
/// <param name="HasDesign">Whether there is a design without errors.</param>
public sealed record TemplatesView(string Project, LengthUnit Unit, ImmutableArray<TemplateLine> Lines, bool HasDesign);

/// <summary>Prints templates at full size for the drilled and shaped parts of projects.</summary>
public interface ITemplateService
{
    /// <summary>The templates; null where the project is gone.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="pull">From hole to hole of drawer pulls.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<TemplatesView?> FindAsync(Guid projectId, Length pull, PaperSize paper, CancellationToken cancel = default);

    /// <summary>Prints them; missing where the project or all of the templates are gone.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="ids">Which of them; none for all.</param>
    /// <param name="pull">From hole to hole of drawer pulls.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<PaperFile>> PrintAsync(
        Guid projectId,
        IReadOnlyCollection<string> ids,
        Length pull,
        PaperSize paper,
        CancellationToken cancel = default
    );
}
