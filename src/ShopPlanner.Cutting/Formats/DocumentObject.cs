using System.Text.Json;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Cutting.Formats;

/// <summary>An object of a document with its members by name. A name given twice is a fault: which was meant is not
/// guessed.</summary>
internal sealed class DocumentObject
{
    // Beyond any format of ours; keeps the table of names small whatever is in the document.
    private const int MostMembers = 1000;

    private readonly Dictionary<string, JsonElement> members = new(StringComparer.Ordinal);
    private readonly FaultList faults;

    public DocumentObject(JsonElement element, string path, FaultList faults)
    {
        Path = path;
        this.faults = faults;
        if (element.ValueKind == JsonValueKind.Object)
            Fill(element);
    }

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
