using System.Globalization;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage;

/// <summary>A command that makes something, and how what it made is found again.</summary>
/// <typeparam name="T">The answer's type.</typeparam>
/// <param name="Command">Made by the device.</param>
/// <param name="Asked">What is asked, in full; see <see cref="Making.Asked"/>.</param>
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

    /// <summary>What it is called when it was deleted since, e.g. <c>project</c>.</summary>
    public required string What { get; init; }
}

/// <summary>Texts about commands.</summary>
internal static class Making
{
    /// <summary>Returns a text that is equal for two commands exactly when they ask for the same.</summary>
    /// <param name="verb">What to do.</param>
    /// <param name="with">What with; each as <see cref="ShopJson"/> writes it.</param>
    public static string Asked(string verb, params object?[] with) => $"{verb} {ShopJson.Hash(with)}";

    /// <summary>Writes an id down as what was made.</summary>
    public static string Text(Guid id) => id.ToString("D", CultureInfo.InvariantCulture);
}
