using System.Collections.Immutable;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Publishing;

/// <summary>What a builder chooses to publish of a project.</summary>
/// <param name="License">The terms.</param>
/// <param name="By">Who made it; may be empty.</param>
/// <param name="HasPrices">Whether it shows what she pays.</param>
/// <param name="HasStores">Whether it names her stores.</param>
/// <param name="HasStock">Whether it tells what she took from her rack and bin.</param>
public sealed record PublishChoices(PublishLicense License, string By, bool HasPrices, bool HasStores, bool HasStock)
{
    /// <summary>Nothing of the shop, and no right given away.</summary>
    public static PublishChoices Usual { get; } = new(PublishLicense.Reserved, "", false, false, false);

    /// <summary>Whether anything of the shop is shown.</summary>
    public bool ShowsShop => HasPrices || HasStores || HasStock;
}

/// <summary>Publishes projects.</summary>
public interface IPublishService
{
    /// <summary>Returns the files of a project's design as it stands. Faulty where it has no design, or one that cannot be worked
    /// out; missing where the project is gone.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="choices">What is shown.</param>
    /// <param name="photos">Pictures of the finished piece.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<Publication>> PublishAsync(
        Guid projectId,
        PublishChoices choices,
        ImmutableArray<CleanPhoto> photos,
        CancellationToken cancel = default
    );
}
