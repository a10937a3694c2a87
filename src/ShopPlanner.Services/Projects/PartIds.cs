namespace ShopPlanner.Services.Projects;

/// <summary>Ids of parts where several projects meet: the project's letters before the mark, <c>BB A</c>.</summary>
internal static class PartIds
{
    private const char Between = ' ';

    /// <summary>Unique over projects, whose letters differ.</summary>
    public static string Of(string code, string mark) => $"{code}{Between}{mark}";

    /// <summary>The mark alone; the whole id where no letters stand before it.</summary>
    public static string MarkOf(string id) => id[(id.LastIndexOf(Between) + 1)..];
}
