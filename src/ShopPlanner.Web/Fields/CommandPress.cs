using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Fields;

/// <summary>A press of a button or the sending of a form. Whoever does it says whether it was done.</summary>
/// <param name="Id">The same for every repetition of one press.</param>
public sealed record CommandPress(CommandId Id)
{
    /// <summary>Whether it was done: the next press is another command, and a form's texts are let go.</summary>
    public bool IsDone { get; set; }
}
