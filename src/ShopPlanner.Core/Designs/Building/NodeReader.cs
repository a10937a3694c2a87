using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Reads the members of a frame, fill or top. After a fault a reading gives a harmless value; <see cref="Failed"/>
/// tells, and nothing is to be built then.</summary>
internal sealed class NodeReader
{
    private static readonly RoleMaterial NoMaterial = new(
        "",
        null,
        "",
        MaterialForm.Sheet,
        Measures.Length.FromInches(1),
        null,
        null
    );

    private readonly DesignNode node;
    private readonly KindInfo kind;
    private readonly Scope scope;
    private readonly ImmutableArray<RoleMaterial> materials;
    private readonly List<Fault> faults;

    public NodeReader(DesignNode node, KindInfo kind, Scope scope, ImmutableArray<RoleMaterial> materials, List<Fault> faults)
    {
        (this.node, this.kind, this.scope, this.materials, this.faults) = (node, kind, scope, materials, faults);
        foreach (var (name, value) in node.Members.Where(one => kind.Members.All(member => member.Name != one.Key)))
            Fail(
                name,
                value,
                $"isn't a setting of {kind.Name}: it takes {string.Join(", ", kind.Members.Select(one => one.Name))}"
            );
    }

    /// <summary>True once something could not be read.</summary>
    public bool Failed { get; private set; }

    public LengthUnit Unit => scope.Unit;

    /// <summary>A length.</summary>
    public Working<Length> Length(string name)
    {
        var (member, text) = Text(name);
        var none = Working.Given(member.Label, Measures.Length.Zero);
        if (text is null || scope.Length(member.Label, text, At(name)) is not { } length)
            return Broken(none);
        if (length.Value >= Measures.Length.Zero)
            return length;
        Fail(name, text, $"comes to {LengthFormat.Plain(length.Value, Unit).Text}, less than zero: there is no room for it");
        return none;
    }

    /// <summary>A length; null where the member is empty.</summary>
    public Working<Length>? MaybeLength(string name) => Text(name).Text is { Length: > 0 } ? Length(name) : null;

    /// <summary>Degrees.</summary>
    public double Angle(string name)
    {
        var (_, text) = Text(name);
        return text is not null && scope.Number(text, At(name)) is { } degrees ? (double)degrees : Broken(0d);
    }

    /// <summary>A side of a box.</summary>
    public BoxSide Side(string name) => DesignReader.Sides.GetValueOrDefault(Choice(name));

    /// <summary>A direction.</summary>
    public Axis Direction(string name) => DesignReader.Directions.GetValueOrDefault(Choice(name));

    /// <summary>A whole number.</summary>
    public int Count(string name)
    {
        var (_, text) = Text(name);
        return text is not null && scope.Count(text, At(name)) is { } count ? count : Broken(0);
    }

    /// <summary>One of the member's choices.</summary>
    public string Choice(string name)
    {
        var (member, text) = Text(name);
        if (text is not null && member.Choices.Contains(text))
            return text;
        if (text is not null)
            Fail(name, text, "isn't a choice here: pick one of " + Choices(member));
        return Broken(member.Choices[0]);
    }

    /// <summary>The material of a role.</summary>
    public RoleMaterial Role(string name)
    {
        if (MaybeRole(name) is { } material)
            return material;
        if (Text(name).Text is "")
            Fail(name, "", "is empty: pick a material role, one of " + Roles);
        return Broken(NoMaterial);
    }

    /// <summary>The material of a role; null where the member is empty.</summary>
    public RoleMaterial? MaybeRole(string name)
    {
        var (_, text) = Text(name);
        if (string.IsNullOrEmpty(text))
            return null;
        if (materials.FirstOrDefault(one => one.Role == text) is { } material)
            return material;
        Fail(name, text, "isn't a material role in this design: it has " + Roles);
        return null;
    }

    private string Roles => string.Join(", ", materials.Select(one => one.Role));

    /// <summary>Notes that what was read does not go together.</summary>
    public void Fail(string name, string value, string message)
    {
        Failed = true;
        faults.Add(Fault.Of(At(name), value, message));
    }

    /// <summary>Place in the document of what is read.</summary>
    public string Path => node.Path;

    private string At(string name) => node.Path + "." + name;

    private static string Choices(MemberInfo member) => string.Join(", ", member.Choices.Where(one => one.Length > 0));

    private string Wanted(MemberInfo member) =>
        member.Type switch
        {
            MemberType.Length => "give a length, as in 3/4 in or 18 mm",
            MemberType.Count => "give a whole number",
            MemberType.Angle => "give degrees, as in 45",
            MemberType.Choice => "pick one of " + Choices(member),
            _ => "pick a material role, one of " + Roles,
        };

    private (MemberInfo Member, string? Text) Text(string name)
    {
        var member = kind.Members.First(one => one.Name == name);
        var text = node.Members.GetValueOrDefault(name) ?? member.Default;
        if (text is null)
            Fail(name, "", "is missing: " + Wanted(member));
        return (member, text);
    }

    private T Broken<T>(T harmless)
    {
        Failed = true;
        return harmless;
    }
}
