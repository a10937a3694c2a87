using System.Text.Json;

namespace ShopPlanner.Core.Documents;

/// <summary>An object of a document with its members by name. A name given twice is a fault: which was meant is not
/// guessed.</summary>
public sealed class DocumentObject
{
    // Beyond any format of ours; keeps the table of names small whatever is in the document.
    private const int MostMembers = 1000;

    private readonly Dictionary<string, JsonElement> members = new(StringComparer.Ordinal);
    private readonly FaultList faults;

    /// <summary>Takes the members of an element; none where it is no object.</summary>
    /// <param name="element">Of the document.</param>
    /// <param name="path">The member it stands in; empty for the document itself.</param>
    /// <param name="faults">Where faults are noted.</param>
    public DocumentObject(JsonElement element, string path, FaultList faults)
    {
        Path = path;
        ArgumentNullException.ThrowIfNull(faults);
        this.faults = faults;
        if (element.ValueKind == JsonValueKind.Object)
            Fill(element);
    }

    /// <summary>The member it stands in; empty for the document itself.</summary>
    public string Path { get; }

    /// <summary>The member, present or not.</summary>
    public DocumentValue this[string name] => new(members.GetValueOrDefault(name), PathOf(name), faults);

    private void Fill(JsonElement element)
    {
        if (element.GetPropertyCount() > MostMembers)
        {
            faults.Add(Path, "{…}", $"has more than {MostMembers} members");
            return;
        }

        foreach (var property in element.EnumerateObject())
            if (!members.TryAdd(property.Name, property.Value))
                faults.Add(PathOf(property.Name), DocumentValue.Show(property.Value), "is given twice: keep one of the two");
    }

    private string PathOf(string name) => Path.Length == 0 ? name : Path + "." + name;
}
