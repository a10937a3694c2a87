using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class ProjectTrash : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateTime>(name: "DeletedUtc", table: "Projects", type: "TEXT", nullable: true);

            migrationBuilder.AddColumn<Guid>(name: "WithdrawnWith", table: "Plans", type: "TEXT", nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(name: "DeletedUtc", table: "Projects");

            migrationBuilder.DropColumn(name: "WithdrawnWith", table: "Plans");
        }
    }
}
