using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>A change of the design.</summary>
/// <param name="With">Returns a design with the change.</param>
/// <param name="What">What changed, for the undo button.</param>
/// <param name="Field">The field that it was typed in, to be answered; null for a button.</param>
public sealed record IdeaChange(Func<DesignDocument, DesignDocument> With, string What, FieldChange? Field = null);
