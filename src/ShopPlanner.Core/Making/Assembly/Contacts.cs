using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Which copies touch, joined or not, and where.</summary>
internal sealed class Contacts
{
    private readonly List<Contact>[] of;

    public Contacts(Solids solids)
    {
        var count = solids.All.Length;
        of = [.. solids.All.Select(_ => new List<Contact>())];
        for (var one = 0; one < count; one++)
        for (var other = one + 1; other < count; other++)
            if (solids.Box(one).Meeting(solids.Box(other)) is { } where)
            {
                of[one].Add(new(other, where));
                of[other].Add(new(one, where));
            }
    }

    /// <summary>What touches a copy.</summary>
    public IReadOnlyList<Contact> Of(int copy) => of[copy];
}

/// <summary>Where a copy is touched.</summary>
/// <param name="By">Number of the other copy.</param>
/// <param name="Where">What both share: a face, or wood where one is let into the other.</param>
internal readonly record struct Contact(int By, Box Where);
