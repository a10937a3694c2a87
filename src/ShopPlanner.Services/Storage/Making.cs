using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage;

/// <summary>A command that makes something, and how what it made is found again.</summary>
/// <typeparam name="T">The answer's type.</typeparam>
/// <param name="Command">Made by the device.</param>
/// <param name="Asked">What is asked, in full; see <see cref="CommandTexts.Asked"/>.</param>
internal sealed record Making<T>(CommandId Command, string Asked)
    where T : class
{
    /// <summary>Makes it; not called where the command was done before.</summary>
    public required Func<ShopContext, Task<Outcome<T>>> Make { get; init; }

    /// <summary>Writes down what was made, for <see cref="Find"/> to read.</summary>
    public required Func<T, string> Made { get; init; }

    /// <summary>Finds what was made as it is now; null when it was deleted since.</summary>
    public required Func<ShopContext, string, Task<T?>> Find { get; init; }

    /// <summary>Called with the number that <see cref="ShopWork.Changes"/> has once it is stored, before anybody else
    /// writes.</summary>
    public Action<long>? Written { get; init; }

    /// <summary>Whether it may take much room, so that it is refused while the disk has little left.</summary>
    public bool NeedsRoom { get; init; }

    /// <summary>What it sets, in full, where of two such commands the later one of a sender holds: <c>cut 3 of …</c>. Null
    /// where each command counts. What is found of it must not depend on what was made.</summary>
    public string? Subject { get; init; }

    /// <summary>What it is called when it was deleted since, e.g. <c>project</c>.</summary>
    public required string What { get; init; }
}
