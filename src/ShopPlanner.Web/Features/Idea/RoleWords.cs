using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Roles of materials as a person reads them.</summary>
internal static class RoleWords
{
    /// <summary>The role with its material: <c>Case: Birch plywood 3/4</c>.</summary>
    public static string Of(RoleMaterial material) => $"{Title(material.Role)}: {material.Name}";

    /// <summary>The role alone: <c>Case</c>.</summary>
    public static string Title(string role) =>
        role.Length == 0 ? role : char.ToUpperInvariant(role[0]) + role[1..].Replace('_', ' ');
}
