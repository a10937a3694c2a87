using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Roles of materials as a person reads them.</summary>
internal static class RoleWords
{
    /// <summary>The role with its material: <c>Case: Birch plywood 3/4</c>.</summary>
    public static string Of(RoleMaterial material) => $"{Title(material.Role)}: {material.Name}";

    /// <summary>The role alone: <c>Case</c>.</summary>
    public static string Title(string role) => Sentences.Capital(role).Replace('_', ' ');
}
