namespace ShopPlanner.Services.Publishing;

/// <summary>Terms under which others may use a published plan.</summary>
/// <param name="Id">Its identifier of the SPDX license list, or <c>all-rights-reserved</c>.</param>
/// <param name="Name">Its name there.</param>
/// <param name="Address">Where its text is; null where there is none.</param>
/// <param name="Says">What it means, in one plain sentence.</param>
public sealed record PublishLicense(string Id, string Name, string? Address, string Says)
{
    /// <summary>What holds where nothing else is chosen: sharing more is the builder's own decision.</summary>
    public static PublishLicense Reserved { get; } =
        new(
            "all-rights-reserved",
            "All rights reserved",
            null,
            "You may build from this plan for yourself. To copy, change or publish it, ask the author."
        );

    /// <summary>All that can be chosen (identifiers and names: SPDX license list 3).</summary>
    public static IReadOnlyList<PublishLicense> All { get; } =
    [
        Reserved,
        new(
            "CC-BY-4.0",
            "Creative Commons Attribution 4.0 International",
            "https://creativecommons.org/licenses/by/4.0/",
            "You may copy and change this plan, also to sell, as long as you name the author."
        ),
        new(
            "CC-BY-SA-4.0",
            "Creative Commons Attribution Share Alike 4.0 International",
            "https://creativecommons.org/licenses/by-sa/4.0/",
            "You may copy and change this plan, also to sell, as long as you name the author and share your version the same way."
        ),
        new(
            "CC0-1.0",
            "Creative Commons Zero v1.0 Universal",
            "https://creativecommons.org/publicdomain/zero/1.0/",
            "The author gives up all rights: do with this plan what you like."
        ),
    ];

    /// <summary>Returns the terms of an identifier; null where it is not known.</summary>
    public static PublishLicense? Find(string? id) =>
        All.FirstOrDefault(one => one.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
