using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Access;

/// <summary>Links that show one plan to whoever has them, for reading, until a day.</summary>
public interface IShareService
{
    /// <summary>Shares a plan.</summary>
    /// <param name="id">Of the share; the same id asked again is refused, as the link cannot be shown twice.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="name">The plan's name.</param>
    /// <param name="days">How long the link holds, 1 to 90.</param>
    Outcome<ShareOffer> Share(Guid id, Guid plan, string name, int days);

    /// <summary>Ends a link at once.</summary>
    Outcome<Done> End(Guid share);

    /// <summary>Returns the plan of a link; null where the link is unknown, has ended or was taken back.</summary>
    SharedPlan? Find(string token);
}
